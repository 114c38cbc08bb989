import { quantile } from "../../bench/quantile.ts";
import { type ClusteredMean, clusteredMean } from "../clustered-mean.ts";
import type { PlannedCondition } from "./plan-run.ts";
import type { PlayerOutcome } from "./simulate-player.ts";

/** One odds ratio's matches of all players together. */
export interface Series {
  readonly oddsRatio: number;
  /** Share of matches with an alert. */
  readonly raised: ClusteredMean;
  /** Share of matches with a second alert of the same watch. */
  readonly again: number;
  /** The same players by exact recursion, and the 90th percentile of their own; `undefined` where there is none. */
  readonly exact: { readonly mean: number; readonly high: number } | undefined;
  readonly matches: number;
  /** Standard error of the matches alone, the players being who they are. */
  readonly ownSe: number;
}

const mean = (values: readonly number[]): number => clusteredMean(values).mean;

const seriesOf = (
  { condition, players, matchesEach }: PlannedCondition,
  outcomes: readonly PlayerOutcome[],
  i: number,
): Series => {
  const shares = outcomes.map(({ raised }) => (raised[i] ?? Number.NaN) / matchesEach);
  const exact = outcomes.flatMap((outcome) => outcome.exact?.[i] ?? []);
  const own = exact.length === 0 ? shares : exact;
  const variance = own.reduce((sum, share) => sum + (share * (1 - share)) / matchesEach, 0);
  return {
    oddsRatio: condition.oddsRatios[i] ?? Number.NaN,
    raised: clusteredMean(shares),
    again: mean(outcomes.map(({ again }) => (again[i] ?? Number.NaN) / matchesEach)),
    exact: exact.length === 0 ? undefined : { mean: mean(exact), high: quantile(exact, 0.9) },
    matches: players * matchesEach,
    ownSe: Math.sqrt(variance) / players,
  };
};

/** What the players of a condition came to, one series for each of its odds ratios. */
export const conditionResult = (
  planned: PlannedCondition,
  outcomes: readonly PlayerOutcome[],
): readonly Series[] => planned.condition.oddsRatios.map((_, i) => seriesOf(planned, outcomes, i));
