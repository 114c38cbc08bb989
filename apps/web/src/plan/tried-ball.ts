import type { BallToJudge } from "@courtloom/decisions";
import type { BallHeight, BallTime, OpponentPlace } from "@courtloom/match-log";
import {
  aimOf,
  BASELINE,
  type Channel,
  type CourtPoint,
  channelAt,
  type DepthStruck,
  depthStruckAt,
  directionOf,
} from "@courtloom/tennis";

/** A ball that somebody draws to try a plan, in the striker's metres. Without `to` it was touched: kept. */
export interface TriedBall {
  readonly from: CourtPoint;
  readonly to?: CourtPoint | undefined;
  readonly ballHeight?: BallHeight | undefined;
  readonly ballTime?: BallTime | undefined;
  readonly opponent?: OpponentPlace | undefined;
}

const SIDE_X: Readonly<Record<Channel, number>> = { left: -2.8, middle: 0, right: 2.8 };
const DEPTH_Y: Readonly<Record<DepthStruck, number>> = {
  behindBaseline: -(BASELINE + 0.8),
  insideBaseline: -9,
  insideServiceLine: -4.5,
};
const LANDING_Y = 9.5;

/** The middle of a place that is chosen by its name. */
export const placeFrom = (depth: DepthStruck, side: Channel): CourtPoint => ({
  x: SIDE_X[side],
  y: DEPTH_Y[depth],
});

export const placeTo = (channel: Channel): CourtPoint => ({ x: SIDE_X[channel], y: LANDING_Y });

export const depthOf = ({ from }: TriedBall): DepthStruck => depthStruckAt(from.y);
export const sideOf = ({ from }: TriedBall): Channel => channelAt(from.x);

/** Where a drawn ball was sent; undefined for a touch and where the drawing has no direction. */
export const channelTo = ({ from, to }: TriedBall): Channel | undefined => {
  const aim = to && aimOf({ from, to });
  return aim && channelAt(aim.x);
};

export const directionOfTried = ({ from, to }: TriedBall) => to && directionOf({ from, to });

/** A groundstroke, as a plan judges it. */
export const ballToJudge = (ball: TriedBall): BallToJudge => ({
  kind: "groundstroke",
  depth: depthOf(ball),
  side: sideOf(ball),
  ballHeight: ball.ballHeight,
  ballTime: ball.ballTime,
  opponent: ball.opponent,
  choice: ball.to ? directionOfTried(ball) : "kept",
});
