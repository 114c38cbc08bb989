import type { CusumScores } from "./cusum-scores.ts";

/** Where the evidence of a watch that has not raised yet may stand, and with what probability. */
export interface CusumChain {
  /** Moves one attempt on and gives the probability that the watch raises at it for the first time. */
  readonly advance: (rate: number, threshold: number) => number;
}

/** Probabilities below this at the top of the evidence are dropped: over a match they cannot add up to 1e-14. */
const NOTHING = 1e-20;

/** Next probabilities of evidence 0 … threshold − 1 from those of 0 … top, and the probability that leaves: reaches the threshold. */
const spread = (
  now: Float64Array,
  next: Float64Array,
  top: number,
  { up, down }: CusumScores,
  rate: number,
  threshold: number,
): number => {
  const stay = 1 - rate;
  next.fill(0, 0, Math.min(threshold, top + up + 1));
  let atZero = 0;
  for (let c = 0; c <= Math.min(down, top); c++) atZero += now[c] ?? 0;
  next[0] = stay * atZero;
  for (let c = down + 1; c <= top; c++) next[c - down] = stay * (now[c] ?? 0);
  const last = Math.min(top, threshold - up - 1);
  for (let c = 0; c <= last; c++) next[c + up] = (next[c + up] ?? 0) + rate * (now[c] ?? 0);
  let leaving = 0;
  for (let c = Math.max(0, last + 1); c <= top; c++) leaving += now[c] ?? 0;
  return rate * leaving;
};

/**
 * The exact distribution of the evidence, begun at 0 and carried attempt by attempt over the states 0 … threshold − 1; what reaches the
 * threshold leaves. `largest` is the largest threshold that will be given; thresholds may rise and never fall. One attempt costs
 * about three additions per state. SPEC S14; source: Brook and Evans 1972 (the Markov chain of a CUSUM).
 */
export const createCusumChain = (scores: CusumScores, largest: number): CusumChain => {
  let now = new Float64Array(largest);
  let next = new Float64Array(largest);
  let top = 0;
  now[0] = 1;
  return {
    advance: (rate, threshold) => {
      const raised = spread(now, next, top, scores, rate, threshold);
      top = Math.min(threshold - 1, top + scores.up);
      [now, next] = [next, now];
      while (top > 0 && (now[top] ?? 0) < NOTHING) top--;
      return raised;
    },
  };
};
