import type { Side } from "@courtloom/core";
import type { SeenPoint, StrokeKind } from "@courtloom/tennis";

export type { StrokeKind as ShotKind } from "@courtloom/tennis";
export { STROKE_KINDS as SHOT_KINDS } from "@courtloom/tennis";

export const SHOT_RESULTS = ["winner", "forced", "weak", "in", "missed"] as const;
/** `forced`: it forced the opponent's miss. Unanswered is unknown. */
export type ShotResult = (typeof SHOT_RESULTS)[number];

export const MISSES = ["net", "wide", "long"] as const;
export type Miss = (typeof MISSES)[number];

export const BALL_HEIGHTS = ["low", "netHigh", "sitsUp", "jumps"] as const;
export type BallHeight = (typeof BALL_HEIGHTS)[number];

export const BALL_TIMES = ["set", "hurried", "stretched"] as const;
export type BallTime = (typeof BALL_TIMES)[number];

export const OPPONENT_PLACES = ["set", "wideLeft", "wideRight", "deep", "net"] as const;
export type OpponentPlace = (typeof OPPONENT_PLACES)[number];

/** Why the score counts a ball that the figures leave out. */
export const SET_ASIDE_REASONS = ["netCord", "calledOut"] as const;
export type LeftOut = (typeof SET_ASIDE_REASONS)[number];

/**
 * One stroke after the serve. `from` and `to` are the drawn ends as seen (see `SeenPoint`);
 * a touch ("kept: cross-court or middle") has no `to`. Optional members are what the chartist
 * was asked and answered; absent is unknown, never "no".
 */
export interface Shot {
  readonly striker: Side;
  readonly from: SeenPoint;
  readonly to?: SeenPoint;
  readonly kind?: StrokeKind;
  readonly result?: ShotResult;
  readonly miss?: Miss;
  readonly missForced?: boolean;
  readonly ballHeight?: BallHeight;
  readonly ballTime?: BallTime;
  readonly opponent?: OpponentPlace;
  readonly cameIn?: boolean;
  readonly hesitated?: boolean;
  readonly leftOut?: LeftOut;
}
