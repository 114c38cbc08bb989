import { type ByChoice, CHOICE_SIGNS, type ChoiceFit, winProbability } from "./choice-fit.ts";

/** The 95 % point of the standard normal, for two-sided 90 % intervals. */
const Z90 = 1.6448536269514722;

/** A difference or a sum with its standard error and 90 % interval. */
export interface Estimate {
  readonly value: number;
  readonly se: number;
  readonly low: number;
  readonly high: number;
  /** The interval excludes 0; otherwise it cannot be told apart from nothing and is not reported as a loss or a gain. */
  readonly distinguishable: boolean;
}

/** What the two choices are worth to one player in one situation. */
export interface SituationWorth {
  /** Chance of winning the point after either choice. */
  readonly wins: ByChoice<number>;
  /** First choice minus second, in points won per choice. */
  readonly difference: Estimate;
  /** Points it stands on, by choice. */
  readonly n: ByChoice<number>;
}

/** An estimate and how it moves with each deviation of the fit. */
interface Moving {
  readonly value: number;
  readonly gradient: Float64Array;
}

/** An estimate with the standard error that the fit's covariance gives its gradient: √(gᵀ·Σ·g). */
const estimate = (fit: ChoiceFit, value: number, gradient: Float64Array): Estimate => {
  let variance = 0;
  for (const [i, row] of fit.covariance.entries()) {
    for (const [j, cov] of row.entries()) variance += (gradient[i] ?? 0) * cov * (gradient[j] ?? 0);
  }
  const se = Math.sqrt(Math.max(0, variance));
  const low = value - Z90 * se;
  const high = value + Z90 * se;
  return { value, se, low, high, distinguishable: low > 0 || high < 0 };
};

const differenceOf = (fit: ChoiceFit, situation: number): Moving => {
  const gradient = new Float64Array(fit.deviations.length);
  const rates = ([0, 1] as const).map((choice) => winProbability(fit, fit.deviations, situation, choice));
  const [first = Number.NaN, second = Number.NaN] = rates;
  const slopes = [first * (1 - first), -second * (1 - second)] as const;
  gradient[0] = slopes[0] + slopes[1];
  gradient[1 + situation] = slopes[0] + slopes[1];
  gradient[1 + fit.academyLogits.length + situation] =
    CHOICE_SIGNS[0] * slopes[0] + CHOICE_SIGNS[1] * slopes[1];
  return { value: first - second, gradient };
};

/** √ of the mean choices per point of a situation: several choices of one point share its outcome. 1 where it is not known or less. */
const clusterFactor = (choicesPerPoint: readonly number[] | undefined, situation: number): number =>
  Math.sqrt(Math.max(1, choicesPerPoint?.[situation] ?? 1));

/**
 * What the choices are worth in each situation: chance of winning the point after either, first minus second with its 90 % interval.
 * `choicesPerPoint` (mean choices per point, by situation) widens the standard error by its root, a safe bound. Goes with the choice;
 * does not say that the choice causes it. SPEC S32, S34.
 */
export const worthBySituation = (
  fit: ChoiceFit,
  choicesPerPoint?: readonly number[],
): readonly SituationWorth[] =>
  fit.counts.map(([first, second], s) => {
    const { value, gradient } = differenceOf(fit, s);
    const factor = clusterFactor(choicesPerPoint, s);
    return {
      wins: [winProbability(fit, fit.deviations, s, 0), winProbability(fit, fit.deviations, s, 1)],
      difference: estimate(
        fit,
        value,
        gradient.map((g) => factor * g),
      ),
      n: [first.n, second.n],
    };
  });

/** Choices off the plan in one situation. */
export interface OffPlan {
  /** The choice that the plan asks for. */
  readonly planned: 0 | 1;
  /** How many went the other way; or their sum of weights, such as the size of each point in match chances. */
  readonly count: number;
}

/**
 * Points that go with choices off the plan: Σ count[s]·(P(planned) − P(other)), its standard error by the delta method over the whole
 * fit, 90 % interval. Below 0 where the other choice won more. One entry per situation of the fit; none off the plan is exactly 0,
 * which is not distinguishable. SPEC S33, S34.
 */
export const pointsLost = (
  fit: ChoiceFit,
  offPlan: readonly OffPlan[],
  choicesPerPoint?: readonly number[],
): Estimate => {
  const gradient = new Float64Array(fit.deviations.length);
  let value = 0;
  for (const [s, { planned, count }] of offPlan.entries()) {
    const weight = planned === 0 ? count : -count;
    const difference = differenceOf(fit, s);
    const factor = clusterFactor(choicesPerPoint, s);
    value += weight * difference.value;
    for (const [i, g] of difference.gradient.entries())
      gradient[i] = (gradient[i] ?? 0) + weight * factor * g;
  }
  return estimate(fit, value, gradient);
};
