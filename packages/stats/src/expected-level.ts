import { type BetaPosterior, central90 } from "./beta-posterior.ts";

/** What is expected of a rate, in [0, 1], with its central 90 %. */
export interface ExpectedLevel {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The level to expect for the rest of a match after x of n today: the match's own distribution (`matchPredictive`) met by today's
 * attempts, Beta(Mp̂ + x, M(1 − p̂) + n − x). Without attempts it is what was expected before. SPEC S22.
 */
export const expectedLevel = (predictive: BetaPosterior, x: number, n: number): ExpectedLevel => {
  const today = { a: predictive.a + x, b: predictive.b + n - x };
  return { mean: today.a / (today.a + today.b), ...central90(today) };
};
