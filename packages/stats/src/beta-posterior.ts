import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";

/** One past match: x events in n attempts. */
export interface PastMatch {
  readonly x: number;
  readonly n: number;
}

/** Beta(a, b) for a player's long-run rate. */
export interface BetaPosterior {
  readonly a: number;
  readonly b: number;
}

/** How much the prior counts, in attempts. */
export const PRIOR_STRENGTH = 20;
/** Normal spread from day to day: a match's own rate is Beta(m·p, m·(1−p)). */
export const DAY_TO_DAY = 60;

/**
 * What is known of a player's long-run rate from past matches, starting from the academy's mean (in (0, 1)).
 * A match of n attempts weighs 1 / (1 + (n − 1) / (m + 1)) each, since attempts of one day go together.
 * No past: the prior Beta(20·mean, 20·(1 − mean)). SPEC S2.
 */
export const betaPosterior = (
  academyMean: number,
  past: readonly PastMatch[],
  m: number = DAY_TO_DAY,
): BetaPosterior => {
  let a = PRIOR_STRENGTH * academyMean;
  let b = PRIOR_STRENGTH * (1 - academyMean);
  for (const { x, n } of past) {
    if (n <= 0) continue;
    const weight = 1 / (1 + (n - 1) / (m + 1));
    a += weight * x;
    b += weight * (n - x);
  }
  return { a, b };
};

/** Central 90 % of Beta(a, b). */
export const central90 = ({ a, b }: BetaPosterior): { readonly low: number; readonly high: number } => ({
  low: betaQuantile(0.05, a, b),
  high: betaQuantile(0.95, a, b),
});

/**
 * The distribution of the rate in one coming match: the posterior widened by the day-to-day spread,
 * matched by its first two moments. SPEC S3.
 */
export const matchPredictive = ({ a, b }: BetaPosterior, m: number = DAY_TO_DAY): BetaPosterior => {
  const mean = a / (a + b);
  const between = (mean * (1 - mean)) / (a + b + 1);
  const spread = mean * (1 - mean);
  const variance = between + (spread - between) / (m + 1);
  const size = spread / variance - 1;
  return { a: size * mean, b: size * (1 - mean) };
};
