import type { CusumScores } from "./cusum-scores.ts";

/** Where the evidence of a watch that has not raised yet may stand, and with what probability. */
export interface CusumChain {
  /** Moves one attempt on and gives the probability that the watch raises at it for the first time. */
  readonly advance: (rate: number, threshold: number) => number;
}

/** Probabilities below this at the top of the evidence are dropped: over a match they cannot add up to 1e-14. */
const NOTHING = 1e-20;

/** Sum of the probabilities of the evidence from `low` to `high`. */
const sumBetween = (now: Float64Array, low: number, high: number): number => {
  let sum = 0;
  for (let c = Math.max(0, low); c <= high; c++) sum += now[c] ?? 0;
  return sum;
};

/**
 * Next probabilities of evidence 0 … `nextTop` from those of 0 … `top`. Each place is written once, from the place that falls to it and
 * the place that rises to it, in stretches where both, one or neither exists: this loop is nearly all of a threshold's cost.
 */
const spread = (
  now: Float64Array,
  next: Float64Array,
  [top, nextTop]: readonly [number, number],
  { up, down }: CusumScores,
  rate: number,
): void => {
  const stay = 1 - rate;
  next[0] = stay * sumBetween(now, 0, Math.min(down, top)) + (up === 0 ? rate * (now[0] ?? 0) : 0);
  const falling = Math.min(top - down, nextTop);
  const rising = Math.max(1, up);
  for (let c = 1; c < rising && c <= nextTop; c++) next[c] = c <= falling ? stay * (now[c + down] ?? 0) : 0;
  for (let c = rising; c <= falling; c++) next[c] = stay * (now[c + down] ?? 0) + rate * (now[c - up] ?? 0);
  for (let c = Math.max(rising, falling + 1); c <= nextTop; c++) next[c] = rate * (now[c - up] ?? 0);
};

/**
 * The exact distribution of the evidence, begun at 0 and carried attempt by attempt over the states 0 … threshold − 1; what reaches the
 * threshold leaves. `largest` is the largest threshold that will be given; thresholds may rise and never fall. One attempt costs
 * about two multiplications per state. SPEC S14; source: Brook and Evans 1972 (the Markov chain of a CUSUM).
 */
export const createCusumChain = (scores: CusumScores, largest: number): CusumChain => {
  let now = new Float64Array(largest);
  let next = new Float64Array(largest);
  let top = 0;
  now[0] = 1;
  return {
    advance: (rate, threshold) => {
      const raised = rate * sumBetween(now, threshold - scores.up, top);
      const nextTop = Math.min(threshold - 1, top + scores.up);
      spread(now, next, [top, nextTop], scores, rate);
      top = nextTop;
      [now, next] = [next, now];
      while (top > 0 && (now[top] ?? 0) < NOTHING) top--;
      return raised;
    },
  };
};
