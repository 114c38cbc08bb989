import { createCusumChain } from "./cusum-chain.ts";
import type { CusumScores } from "./cusum-scores.ts";

/**
 * Probability that a watch has raised by attempt 1, 2, … `attempts` when each attempt is an event with probability `rate`, in [0, 1];
 * exact. `rate` may change from attempt to attempt (numbered from 1), as may the threshold, which never falls. No attempts: empty.
 * SPEC S14.
 */
export const alertProbabilities = (
  scores: CusumScores,
  thresholdAt: (attempt: number) => number,
  rateAt: (attempt: number) => number,
  attempts: number,
): readonly number[] => {
  if (attempts <= 0) return [];
  const chain = createCusumChain(scores, thresholdAt(attempts));
  let raised = 0;
  return Array.from({ length: attempts }, (_, i) => {
    raised += chain.advance(rateAt(i + 1), thresholdAt(i + 1));
    return raised;
  });
};

/** Probability that a watch raises within `attempts` attempts at one rate and one threshold; 0 for none. SPEC S14. */
export const alertProbability = (
  scores: CusumScores,
  threshold: number,
  rate: number,
  attempts: number,
): number => {
  const chain = createCusumChain(scores, threshold);
  let raised = 0;
  for (let i = 0; i < attempts; i++) raised += chain.advance(rate, threshold);
  return raised;
};
