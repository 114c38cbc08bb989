import { assert } from "@courtloom/core";
import { cholesky, inverseWith, type LowerTriangle, solveWith } from "./cholesky.ts";

/** Points won of points played with one choice. */
export interface WonOf {
  readonly won: number;
  readonly n: number;
}

/** Something known of each of the two choices in one situation: the kept ball first, the change second. */
export type ByChoice<T> = readonly [T, T];

/** Spread between players: in all, by situation, and in what the second choice adds; in logits, each above 0. */
export interface FitSpread {
  readonly player: number;
  readonly situation: number;
  readonly choice: number;
}

/** The spread used until there are players enough to fit it (a placeholder of no academy). */
export const DEFAULT_SPREAD: FitSpread = { player: 0.3, situation: 0.15, choice: 0.25 };

/** One player's points, by situation and choice, beside the academy's; as many situations in both, 1 to 24. */
export interface ChoiceData {
  readonly academyLogits: readonly ByChoice<number>[];
  readonly counts: readonly ByChoice<WonOf>[];
}

/** The player's most probable deviations from the academy and how sure they are. */
export interface ChoiceFit {
  readonly academyLogits: readonly ByChoice<number>[];
  readonly counts: readonly ByChoice<WonOf>[];
  /** a, then b of each situation, then c of each situation; in logits. */
  readonly deviations: Float64Array;
  /** Their covariance, rows in the same order: the inverse of the curvature at the most probable place. */
  readonly covariance: readonly Float64Array[];
  /** The curvature's factor, for marginal likelihoods. */
  readonly curvature: LowerTriangle;
}

/** What the first and the second choice carry of the deviation c. */
export const CHOICE_SIGNS = [-0.5, 0.5] as const;

const MAX_ROUNDS = 100;
const CONVERGED = 1e-11;

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));

/** Win probability of a choice of a situation at the given deviations. */
export const winProbability = (
  { academyLogits }: Pick<ChoiceData, "academyLogits">,
  deviations: Float64Array,
  situation: number,
  choice: 0 | 1,
): number => {
  const a = deviations[0] ?? 0;
  const b = deviations[1 + situation] ?? 0;
  const c = deviations[1 + academyLogits.length + situation] ?? 0;
  return logistic((academyLogits[situation]?.[choice] ?? 0) + a + b + CHOICE_SIGNS[choice] * c);
};

/** 1/variance of each deviation, in their order. */
export const priorWeights = (situations: number, spread: FitSpread): Float64Array =>
  Float64Array.from({ length: 1 + 2 * situations }, (_, i) =>
    i === 0 ? spread.player ** -2 : i <= situations ? spread.situation ** -2 : spread.choice ** -2,
  );

/** Logarithm of likelihood times prior, up to what does not depend on the deviations. */
export const logPosterior = (data: ChoiceData, weights: Float64Array, deviations: Float64Array): number => {
  let sum = 0;
  for (const [s, pair] of data.counts.entries()) {
    for (const choice of [0, 1] as const) {
      const { won, n } = pair[choice];
      const p = winProbability(data, deviations, s, choice);
      if (won > 0) sum += won * Math.log(p);
      if (n > won) sum += (n - won) * Math.log1p(-p);
    }
  }
  return deviations.reduce((total, x, i) => total - 0.5 * (weights[i] ?? 0) * x * x, sum);
};

interface Slope {
  readonly gradient: Float64Array;
  readonly curvature: readonly Float64Array[];
}

const add = (row: Float64Array | undefined, i: number, value: number): void => {
  if (row) row[i] = (row[i] ?? 0) + value;
};

const slopeAt = (data: ChoiceData, weights: Float64Array, deviations: Float64Array): Slope => {
  const situations = data.academyLogits.length;
  const gradient = Float64Array.from(weights, (w, i) => -w * (deviations[i] ?? 0));
  const curvature = Array.from(weights, (w, i) => {
    const row = new Float64Array(weights.length);
    row[i] = w;
    return row;
  });
  for (const [s, pair] of data.counts.entries()) {
    for (const choice of [0, 1] as const) {
      const { won, n } = pair[choice];
      const p = winProbability(data, deviations, s, choice);
      const parts = [
        [0, 1],
        [1 + s, 1],
        [1 + situations + s, CHOICE_SIGNS[choice]],
      ] as const;
      for (const [i, x] of parts) {
        add(gradient, i, x * (won - n * p));
        for (const [j, y] of parts) add(curvature[i], j, x * y * n * p * (1 - p));
      }
    }
  }
  return { gradient, curvature };
};

/** A step along `step` that does not make things worse: whole, else halved until it does not. */
const walk = (
  data: ChoiceData,
  weights: Float64Array,
  from: Float64Array,
  step: Float64Array,
): Float64Array => {
  const before = logPosterior(data, weights, from);
  for (let part = 1; part > 1e-6; part /= 2) {
    const to = from.map((x, i) => x + part * (step[i] ?? 0));
    if (logPosterior(data, weights, to) >= before - 1e-12 * Math.abs(before)) return to;
  }
  return from;
};

/**
 * Most probable deviations of one player from the academy in
 * logit P(win point) = μ[s][d] + a + b[s] ± c[s]/2, a ~ N(0, player²), b ~ N(0, situation²), c ~ N(0, choice²),
 * by Newton's method, and their covariance. Shrinking the *difference* between the choices, rather than each choice's rate, keeps the
 * rarer choice of a strong player from looking dear. Without points all deviations are 0. `from` may give a place to begin.
 * Not causal: choices go with easier and harder balls. SPEC S30; source of the method: Laplace approximation of a hierarchical
 * logistic model, Breslow and Clayton 1993.
 */
export const fitChoices = (
  data: ChoiceData,
  spread: FitSpread = DEFAULT_SPREAD,
  from?: Float64Array,
): ChoiceFit => {
  const weights = priorWeights(data.academyLogits.length, spread);
  let deviations: Float64Array = from ?? new Float64Array(weights.length);
  for (let round = 0; ; round++) {
    const { gradient, curvature } = slopeAt(data, weights, deviations);
    const factor = cholesky(curvature);
    assert(factor !== undefined, "a curvature with a proper prior is positive definite");
    const step = solveWith(factor, gradient);
    if (round === MAX_ROUNDS || step.every((x) => Math.abs(x) < CONVERGED)) {
      return { ...data, deviations, covariance: inverseWith(factor), curvature: factor };
    }
    deviations = walk(data, weights, deviations, step);
  }
};
