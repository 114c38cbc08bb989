import type { Rate, UsualRate } from "@courtloom/match-log";
import { betaPosterior, central90, matchPredictive, type PastMatch } from "@courtloom/stats";
import type { Tally } from "./tally/tally.ts";
import { tallyCount } from "./tally/tally-count.ts";

/** An academy's rate says nothing until so many attempts were charted. */
export const ACADEMY_ATTEMPTS = 100;
/** Own past must weigh at least as much as twice the prior before a rate is called the player's own. */
const OWN_WEIGHT = 40;

const pastOf = (tallies: readonly Tally[], rate: Rate): PastMatch[] =>
  tallies.map((tally) => tallyCount(tally, rate));

/** An academy's rate over all that it has charted. */
export interface AcademyRate {
  /** Attempts charted. */
  readonly n: number;
  /** In (0, 1); `undefined` until `ACADEMY_ATTEMPTS` attempts were charted. */
  readonly mean: number | undefined;
}

/** From x of n over all that the academy has charted. */
export const academyRateOf = ({ x, n }: PastMatch): AcademyRate =>
  // Half an event on each side keeps the mean off 0 and 1, where the prior would be no distribution.
  ({ n, mean: n < ACADEMY_ATTEMPTS ? undefined : (x + 0.5) / (n + 1) });

export const academyRate = (rate: Rate, academy: readonly Tally[]): AcademyRate =>
  academyRateOf(
    pastOf(academy, rate).reduce((sum, { x, n }) => ({ x: sum.x + x, n: sum.n + n }), { x: 0, n: 0 }),
  );

/**
 * What is usual of a player, from the attempts of each past match and the academy's rate, or `undefined` when the
 * academy has charted too little to say: mean and central 90 % range of the rate of one coming match. SPEC D8.
 */
export const usualOf = (past: readonly PastMatch[], mean: number | undefined): UsualRate | undefined => {
  if (mean === undefined) return undefined;
  const posterior = betaPosterior(mean, past);
  const predictive = matchPredictive(posterior);
  const ownWeight = posterior.a + posterior.b - betaPosterior(mean, []).a - betaPosterior(mean, []).b;
  return {
    mean: posterior.a / (posterior.a + posterior.b),
    ...central90(predictive),
    a: posterior.a,
    b: posterior.b,
    source: ownWeight >= OWN_WEIGHT ? "own" : "academy",
  };
};

/** The usual rate of a player for one rate that is watched or frozen. */
export const usualRateFrom = (
  rate: Rate,
  own: readonly Tally[],
  { mean }: AcademyRate,
): UsualRate | undefined => usualOf(pastOf(own, rate), mean);

/** The same from the academy's tallies. */
export const usualRate = (
  rate: Rate,
  own: readonly Tally[],
  academy: readonly Tally[],
): UsualRate | undefined => usualRateFrom(rate, own, academyRate(rate, academy));
