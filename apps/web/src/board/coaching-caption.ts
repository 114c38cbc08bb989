import type { CoachingMode } from "@courtloom/match-log";
import { mayHold } from "@courtloom/protocol/names";

export interface CoachingFacts {
  readonly coachingMode: CoachingMode;
  /** Both players are of this academy. */
  readonly bothOwn: boolean;
}

const KEEP = "keep figures from the player";

const MODE_WORDS = {
  practice: "Practice",
  permitted: "Coaching permitted",
  notPermitted: "Coaching not permitted",
  notKnown: "Coaching not known",
} satisfies Record<CoachingMode, string>;

/** The same where there is room for four words. */
export const shortCaption = ({ bothOwn }: CoachingFacts): string =>
  bothOwn ? "Both ours: speak to neither" : "keep figures from player";

/** What staff are told about passing figures on; null where it is allowed. Two own players come first. SPEC rules BD7, CM1. */
export const coachingCaption = ({ coachingMode: mode, bothOwn }: CoachingFacts): string | null => {
  if (mayHold({ screen: "staffBoard", role: "coach", mode, bothOwn }) !== "captioned") return null;
  return bothOwn ? "Both ours: speak to neither, keep figures from both" : `${MODE_WORDS[mode]}: ${KEEP}`;
};
