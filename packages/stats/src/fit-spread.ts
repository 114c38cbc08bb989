import {
  type ByChoice,
  type ChoiceFit,
  DEFAULT_SPREAD,
  type FitSpread,
  fitChoices,
  logPosterior,
  priorWeights,
  type WonOf,
} from "./choice-fit.ts";
import { logDeterminant } from "./cholesky.ts";

/** Players below whose number the spread is not fitted. */
const MIN_PLAYERS = 15;
/** Smallest spread that is ever used: too small is much worse than too large. */
export const SPREAD_FLOOR: FitSpread = { player: 0.2, situation: 0.1, choice: 0.15 };
const LARGEST = 1.5;
/** Widest gap, in logarithms, between a fitted spread and the best one. */
const PRECISION = 0.01;
const PARTS = ["player", "situation", "choice"] as const;
const MAX_SWEEPS = 6;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Logarithm of the marginal likelihood of one player's points (Laplace): log posterior at its top, prior made proper, minus half the
 * logarithm of the curvature's determinant; up to a constant that does not depend on the spread.
 */
export const logMarginal = (fit: ChoiceFit, spread: FitSpread): number => {
  const weights = priorWeights(fit.academyLogits.length, spread);
  const proper = weights.reduce((sum, w) => sum + 0.5 * Math.log(w), 0);
  return logPosterior(fit, weights, fit.deviations) + proper - 0.5 * logDeterminant(fit.curvature);
};

/** Where a function with one top has it between two places, to the precision; golden section. */
const topBetween = (value: (at: number) => number, from: number, to: number): number => {
  let [low, high] = [from, to];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [value(left), value(right)];
  while (high - low > PRECISION) {
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = value(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = value(right);
    }
  }
  // A top at an end is approached and never reached, so the end itself is tried.
  return [from, (low + high) / 2].reduce((best, at) => (value(at) > value(best) ? at : best));
};

/**
 * The spread between an academy's players that makes their points most probable (marginal likelihood by Laplace, one spread after the
 * other until none moves), never below .20, .10 and .15 nor above 1.5. With fewer than 15 players who have points: the default.
 * SPEC S35.
 */
export const fitSpread = (
  academy: readonly ByChoice<number>[],
  players: readonly (readonly ByChoice<WonOf>[])[],
): FitSpread => {
  const known = players.filter((counts) => counts.some((pair) => pair.some(({ n }) => n > 0)));
  if (known.length < MIN_PLAYERS) return DEFAULT_SPREAD;
  const places: (Float64Array | undefined)[] = known.map(() => undefined);
  const total = (spread: FitSpread): number =>
    known.reduce((sum, counts, i) => {
      const fit = fitChoices({ academyLogits: academy, counts }, spread, places[i]);
      places[i] = fit.deviations;
      return sum + logMarginal(fit, spread);
    }, 0);
  let spread = DEFAULT_SPREAD;
  for (let sweep = 0; sweep < MAX_SWEEPS; sweep++) {
    const before = spread;
    for (const part of PARTS) {
      const held = spread;
      const value = (log: number): number => total({ ...held, [part]: Math.exp(log) });
      const lowest = Math.log(SPREAD_FLOOR[part]);
      const top = topBetween(value, lowest, Math.log(LARGEST));
      spread = { ...spread, [part]: top > lowest ? Math.exp(top) : SPREAD_FLOOR[part] };
    }
    if (PARTS.every((part) => Math.abs(Math.log(spread[part] / before[part])) < 2 * PRECISION)) break;
  }
  return spread;
};
