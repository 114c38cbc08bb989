import { silenceWords } from "../board/freshness.ts";
import type { LeaderShown } from "./use-leader.ts";

/** What the pad knows while another phone leads. */
export interface LeadFacts {
  readonly leader: LeaderShown;
  /** This phone led before. */
  readonly led: boolean;
  readonly hasSignal: boolean;
  readonly unsent: number;
}

export interface LeadWords {
  readonly title: string;
  readonly sentences: readonly string[];
  readonly offersTakeOver: boolean;
}

const heardWords = ({ silentSeconds }: LeaderShown): string =>
  silentSeconds === undefined ? "Not heard yet." : `Last heard ${silenceWords(silentSeconds)} ago.`;

/** What may be done about it; nothing is done by time alone. */
const wayOn = ({ leader, led, hasSignal, unsent }: LeadFacts): string => {
  if (!hasSignal) return "No signal. This phone asks again by itself.";
  if (!leader.mayTakeOver) return "You can take over once that phone was not heard for 30 s.";
  if (led && unsent > 0) return "You can take over once all of yours is sent.";
  return "If you take over, your points make the score from then on. Both names stay with the points that each charted.";
};

/** Who leads, since when they were heard, and what that means for this phone. */
export const leadWords = (facts: LeadFacts): LeadWords => {
  const { leader, led, hasSignal, unsent } = facts;
  const kept = led ? ["Your points are kept."] : [];
  const waits = unsent > 0 ? [`${unsent} unsent stay on this phone.`] : [];
  return {
    title: led ? `${leader.by} leads this match now` : `${leader.by} charts this court`,
    sentences: [
      heardWords(leader),
      ...kept,
      "This phone follows the score. One phone at a time makes it.",
      ...waits,
      wayOn(facts),
    ],
    offersTakeOver: hasSignal && leader.mayTakeOver && !(led && unsent > 0),
  };
};
