import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";
import type { BetaPosterior } from "./beta-posterior.ts";
import { type CusumScores, cusumScores } from "./cusum-scores.ts";
import { smallestThreshold, type Threshold } from "./smallest-threshold.ts";

/** Rates that stand for what a match's own rate may be. */
const NODES = 41;

/** Equal-probability nodes of Beta(a, b): its quantiles at (i + ½) / count, rising. */
export const betaNodes = ({ a, b }: BetaPosterior, count: number = NODES): readonly number[] =>
  Array.from({ length: count }, (_, i) => betaQuantile((i + 0.5) / count, a, b));

/** The scores of a watch, from the mean of what is expected of the match. */
export const predictiveScores = ({ a, b }: BetaPosterior): CusumScores => cusumScores(a / (a + b));

/**
 * The threshold of a watch for `attempts` attempts at false-alarm probability `alpha`, given the distribution of the match's own rate
 * (`matchPredictive`): the smallest integer at which the false-alarm probability, averaged over 41 nodes of it, is at most alpha.
 * Right on average over players with such a past, not for each of them. SPEC S15; the average over what is not known is that of
 * Bayesian predictive design; a plain design at the mean rate gives about twice the false alarms it promises.
 */
export const predictiveThreshold = (predictive: BetaPosterior, attempts: number, alpha: number): Threshold =>
  smallestThreshold(predictiveScores(predictive), betaNodes(predictive), attempts, alpha);
