import type { Side } from "@courtloom/core";
import type { FrozenWatch, Rate, UsualRate } from "@courtloom/match-log";
import { designAttempts, matchPredictive, planThresholds, predictiveScores } from "@courtloom/stats";

/** Of what a watch means; raised with any change of it. */
export const WATCH_VERSION = 1;

/** Silent and never sent, so that it may be wrong twice as often. */
const AMBER_ALPHA = 0.1;

export interface WatchDesign {
  readonly side: Side;
  readonly rate: Rate;
  readonly usual: UsualRate;
  /** Attempts of this rate in each of the player's past matches. */
  readonly pastAttempts: readonly number[];
  /** False-alarm probability per match of this watch, in (0, 1): the player's, split over the player's watches. */
  readonly alpha: number;
  /** Fewer false alarms for players of whom little is known. */
  readonly quiet: boolean;
}

/**
 * A watch as the match keeps it: scores and thresholds worked out once from what is known when it opens. Takes tenths
 * of a second. SPEC WA1 to WA3.
 */
export const freezeWatch = ({ side, rate, usual, pastAttempts, alpha, quiet }: WatchDesign): FrozenWatch => {
  const posterior = { a: usual.a, b: usual.b };
  const attempts = designAttempts(pastAttempts);
  const red = planThresholds({ posterior, attempts, alpha, quiet });
  const amber = planThresholds({ posterior, attempts, alpha: AMBER_ALPHA });
  return {
    side,
    rate,
    version: WATCH_VERSION,
    usual: usual.mean,
    source: usual.source,
    ...predictiveScores(matchPredictive(posterior)),
    horizon: attempts,
    red: { first: red.first, late: red.second },
    // Never louder than red: at a small share of a player's error rate red's threshold is the higher one anyway.
    amber: { first: Math.min(amber.first, red.first), late: Math.min(amber.second, red.second) },
    alpha,
  };
};
