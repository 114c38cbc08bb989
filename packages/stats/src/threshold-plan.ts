import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";
import { type BetaPosterior, DAY_TO_DAY, matchPredictive } from "./beta-posterior.ts";
import { betaNodes, predictiveScores, predictiveThreshold } from "./predictive-threshold.ts";
import { smallestThreshold } from "./smallest-threshold.ts";

/** The thresholds of one watch in one match; plain data, fixed when the match opens. */
export interface ThresholdPlan {
  /** N: up to this attempt the first threshold is in force, after it the second, however long the match. */
  readonly attempts: number;
  readonly first: number;
  readonly second: number;
}

/** What a threshold is designed from. */
export interface ThresholdDesign {
  /** What is known of the player's long-run rate. */
  readonly posterior: BetaPosterior;
  /** Day-to-day spread. */
  readonly m?: number;
  /** N, the attempts of a long match of this player (see `designAttempts`). */
  readonly attempts: number;
  /** False-alarm probability within N attempts, in (0, 1). */
  readonly alpha: number;
  /** Fewer false alarms for the players whose rate is hard to know, fewer alerts found. */
  readonly quiet?: boolean;
}

/** How sure the quiet setting is that the long-run rate is no higher than the one it designs for. */
const QUIET_QUANTILE = 0.8;

const thresholdFor = (design: ThresholdDesign, attempts: number): number => {
  const { posterior, m = DAY_TO_DAY, alpha, quiet = false } = design;
  const predictive = matchPredictive(posterior, m);
  const ordinary = predictiveThreshold(predictive, attempts, alpha).threshold;
  if (!quiet) return ordinary;
  const rate = betaQuantile(QUIET_QUANTILE, posterior.a, posterior.b);
  const nodes = Number.isFinite(m) ? betaNodes({ a: m * rate, b: m * (1 - rate) }) : [rate];
  const guaranteed = smallestThreshold(predictiveScores(predictive), nodes, attempts, alpha).threshold;
  return Math.max(ordinary, guaranteed);
};

/**
 * The thresholds for N and for 2N attempts, the second never lower than the first, so that a match that goes on past N has at most
 * 2·alpha false alarms by 2N. The quiet setting designs for the 80 % quantile of the long-run rate, spread by day as a match is, and
 * is never below the ordinary threshold. SPEC S16, S18; source of the guarantee: Gandy and Kvaløy 2013.
 */
export const planThresholds = (design: ThresholdDesign): ThresholdPlan => {
  const first = thresholdFor(design, design.attempts);
  return {
    attempts: design.attempts,
    first,
    second: Math.max(first, thresholdFor(design, 2 * design.attempts)),
  };
};

/** The threshold in force at an attempt, numbered from 1. SPEC S16. */
export const thresholdAt = (plan: ThresholdPlan, attempt: number): number =>
  attempt <= plan.attempts ? plan.first : plan.second;
