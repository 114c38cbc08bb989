import { silenceWords } from "../board/freshness.ts";
import type { CameBack } from "./second/came-back.ts";
import { scoreWords } from "./second/score-words.ts";
import type { LeaderShown } from "./use-leader.ts";

/** What the pad knows while another phone leads. */
export interface LeadFacts {
  readonly leader: LeaderShown;
  /** This phone led before. */
  readonly led: boolean;
  readonly hasSignal: boolean;
  readonly unsent: number;
  /** What happened while this phone, which led, was away. */
  readonly back?: CameBack;
}

export interface LeadWords {
  readonly title: string;
  readonly sentences: readonly string[];
  readonly offersTakeOver: boolean;
  /** Charting beside the lead needs nobody's leave; what a lost lead still has to send goes first. */
  readonly offersSecond: boolean;
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

/** Where the lead went, and what became of the points that were charted after that. */
const keptWords = ({ leader, led, back }: LeadFacts): readonly string[] => {
  if (!back) return led ? ["Your points are kept."] : [];
  const { takenAt, points, times } = back;
  if (leader.handedOver && points === 0) return ["Your points are kept."];
  const at = `${times === 1 ? leader.by : "Another phone"} took over at ${scoreWords(takenAt)}.`;
  if (points === 0) return [at, "All points that you charted count in the score."];
  const count =
    points === 1
      ? "1 point that you charted after that is"
      : `${points} points that you charted after that are`;
  return [
    at,
    `${count} kept beside the score. Whoever leads can compare them and put them in; there is nothing to do here.`,
  ];
};

/** Who leads, since when they were heard, and what that means for this phone. */
export const leadWords = (facts: LeadFacts): LeadWords => {
  const { leader, led, hasSignal, unsent } = facts;
  const now = leader.handedOver ? `Handed over to ${leader.by}` : `${leader.by} leads this match now`;
  const waits = unsent > 0 ? [`${unsent} unsent stay on this phone.`] : [];
  return {
    title: led ? now : `${leader.by} charts this court`,
    sentences: [
      heardWords(leader),
      ...keptWords(facts),
      "This phone follows the score. One phone at a time makes it.",
      ...waits,
      wayOn(facts),
    ],
    offersSecond: !(led && unsent > 0),
    offersTakeOver: hasSignal && leader.mayTakeOver && !(led && unsent > 0),
  };
};
