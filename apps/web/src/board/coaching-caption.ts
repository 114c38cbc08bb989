import type { CoachingMode } from "@courtloom/match-log";

export interface CoachingFacts {
  readonly coachingMode: CoachingMode;
  /** Both players are of this academy. */
  readonly bothOwn: boolean;
}

const KEEP = "keep figures from the player";

const BY_MODE = {
  practice: null,
  permitted: null,
  notPermitted: `Coaching not permitted: ${KEEP}`,
  notKnown: `Coaching not known: ${KEEP}`,
} satisfies Record<CoachingMode, string | null>;

/** The same where there is room for four words. */
export const shortCaption = ({ bothOwn }: CoachingFacts): string =>
  bothOwn ? "Both ours: speak to neither" : "keep figures from player";

/** What staff are told about passing figures on; null where it is allowed. Two own players come first. SPEC rule BD7. */
export const coachingCaption = ({ coachingMode, bothOwn }: CoachingFacts): string | null =>
  bothOwn ? "Both ours: speak to neither, keep figures from both" : BY_MODE[coachingMode];
