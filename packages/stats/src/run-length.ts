import { createCusumChain } from "./cusum-chain.ts";
import type { CusumScores } from "./cusum-scores.ts";

/** The chance of a raise per attempt has settled when it moves by less than this part of itself, this many times in a row. */
const SETTLED = 1e-12;
const SETTLED_FOR = 20;
/** So few have not raised that what is left adds nothing that shows. */
const FEW = 1e-14;

/**
 * Mean number of attempts until a watch raises, begun without evidence, at a constant rate in [0, 1]: the sum of the probabilities of
 * not having raised. Once the chance of a raise per attempt has settled, the rest is a geometric series. Infinite where no path
 * reaches the threshold. SPEC S19.
 */
export const averageRunLength = (scores: CusumScores, threshold: number, rate: number): number => {
  if (scores.up === 0 || rate <= 0) return Number.POSITIVE_INFINITY;
  const chain = createCusumChain(scores, threshold);
  let surviving = 1;
  let sum = 0;
  let chance = 0;
  let settled = 0;
  while (surviving > FEW && settled < SETTLED_FOR) {
    sum += surviving;
    const raised = chain.advance(rate, threshold);
    const now = raised / surviving;
    settled = now > 0 && Math.abs(now - chance) <= SETTLED * now ? settled + 1 : 0;
    chance = now;
    surviving -= raised;
  }
  return surviving > FEW ? sum + surviving / chance : sum;
};
