import { alertProbabilities } from "./alert-probability.ts";
import type { CusumScores } from "./cusum-scores.ts";

/** A match in which the rate changes once. */
export interface RateShift {
  /** Probability of an event up to the change, and after it. */
  readonly before: number;
  readonly after: number;
  /** Attempts before the change; 0 for a whole match at the changed rate. */
  readonly shiftAfter: number;
  /** Attempts of the match, more than `shiftAfter`. */
  readonly attempts: number;
}

/** How a watch does in such a match. */
export interface Operating {
  /** Probability of a raise before the change. */
  readonly falseBefore: number;
  /** Probability of a raise after it, given none before. */
  readonly detected: number;
  /** Attempts from the change to the raise, given that it is found; `undefined` if it never is. */
  readonly meanDelay: number | undefined;
  /** The same with every match counted, those without a raise at all the attempts left. */
  readonly restrictedMeanDelay: number;
}

/**
 * Exact operating characteristics of a watch with one threshold. The delay counts from the first attempt after the change (1 = raised at
 * it), given no raise before. SPEC S19.
 */
export const operating = (scores: CusumScores, threshold: number, shift: RateShift): Operating => {
  const { before, after, shiftAfter, attempts } = shift;
  const rateAt = (attempt: number): number => (attempt <= shiftAfter ? before : after);
  const raisedBy = alertProbabilities(scores, () => threshold, rateAt, attempts);
  const falseBefore = raisedBy[shiftAfter - 1] ?? 0;
  let last = falseBefore;
  let delays = 0;
  for (const [i, raised] of raisedBy.entries()) {
    if (i < shiftAfter) continue;
    delays += (raised - last) * (i + 1 - shiftAfter);
    last = raised;
  }
  const found = last - falseBefore;
  const quiet = 1 - falseBefore;
  return {
    falseBefore,
    detected: found / quiet,
    meanDelay: found > 0 ? delays / found : undefined,
    restrictedMeanDelay: (delays + (1 - last) * (attempts - shiftAfter)) / quiet,
  };
};
