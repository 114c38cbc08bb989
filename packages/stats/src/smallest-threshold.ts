import { alertProbability } from "./alert-probability.ts";
import type { CusumScores } from "./cusum-scores.ts";

export interface Threshold {
  /** The smallest integer whose false-alarm probability is at most the asked one. */
  readonly threshold: number;
  /** That probability: within the attempts designed for, on average over the rates. */
  readonly falseAlarm: number;
}

/** First guess of a threshold, in score points; the search widens from it. */
const FIRST_GUESS = 400;

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** False-alarm probability on average over rates that count alike. */
export const meanFalseAlarm = (
  scores: CusumScores,
  threshold: number,
  rates: readonly number[],
  attempts: number,
): number =>
  rates.reduce((sum, rate) => sum + alertProbability(scores, threshold, rate, attempts), 0) / rates.length;

interface End {
  readonly at: number;
  readonly value: number;
}

/** How far past the straight line's crossing to try, so that the crossing comes to lie between two near places. */
const BEYOND = 1.2;

/**
 * The next place to try between two ends. False alarms fall about exponentially, so the logarithms lie near a straight line; it is
 * followed from the end that is nearer to the target. Until both ends have a logarithm, the lower place is doubled.
 */
const between = (low: End, high: End, target: number): number => {
  const middle = Math.floor((low.at + high.at) / 2);
  if (high.value <= 0) return low.at === 0 ? middle : Math.min(low.at * 2, middle);
  const slope = Math.log(low.value / high.value) / (high.at - low.at);
  const fromLow = Math.log(low.value / target) / slope;
  const fromHigh = Math.log(target / high.value) / slope;
  const place =
    fromLow < fromHigh
      ? low.at + Math.max(1, Math.ceil(BEYOND * fromLow))
      : high.at - Math.max(1, Math.ceil(BEYOND * fromHigh));
  return Math.min(high.at - 1, Math.max(low.at + 1, place));
};

/** The smallest whole number in (0, none] where a falling `value` is at most `target`; value(none) is 0. */
const smallestAtMost = (value: (at: number) => number, target: number, none: number, guess: number): End => {
  let low: End = { at: 0, value: 1 };
  let high: End = { at: none, value: 0 };
  let next = Math.min(guess, none - 1);
  for (let round = 0; high.at - low.at > 1; round++) {
    const tried = { at: next, value: value(next) };
    if (tried.value <= target) high = tried;
    else low = tried;
    // Now and then the middle, so that an end that stays put cannot hold the search up.
    next = round % 5 === 4 ? Math.floor((low.at + high.at) / 2) : between(low, high, target);
  }
  return high;
};

/**
 * The smallest integer threshold whose false-alarm probability within `attempts` attempts, on average over `rates` (each in [0, 1],
 * at least one), is at most `alpha` in (0, 1). Where no path can reach a threshold it costs nothing, so there is always one.
 * Works on multiples of the scores' common divisor, since the evidence stands on no other value. SPEC S15.
 */
export const smallestThreshold = (
  scores: CusumScores,
  rates: readonly number[],
  attempts: number,
  alpha: number,
): Threshold => {
  const unit = gcd(scores.up, scores.down);
  const steps = { up: scores.up / unit, down: scores.down / unit };
  const found = smallestAtMost(
    (at) => meanFalseAlarm(steps, at, rates, attempts),
    alpha,
    attempts * steps.up + 1,
    Math.max(1, Math.ceil(FIRST_GUESS / unit)),
  );
  return { threshold: (found.at - 1) * unit + 1, falseAlarm: found.value };
};
