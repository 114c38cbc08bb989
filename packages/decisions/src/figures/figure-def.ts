import type { ChartingLevel } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import type { BallClass } from "./ball-class.ts";
import type { PlayedPoint } from "./played-point.ts";

export const UNITS = ["balls", "points", "moments"] as const;
/** What a figure counts. Moments are chances to go down the line; some of them no drawn ball stands for. */
export type Unit = (typeof UNITS)[number];

interface Figure {
  /** The charting levels that may feed it. SPEC D2. */
  readonly levels: readonly ChartingLevel[];
}

/** `hit`: true counts in x and n, false in n alone, `undefined` in neither. `part` tells balls of one figure apart. */
export interface BallFigure extends Figure {
  readonly unit: "balls";
  /** Which balls `hit` is asked of. */
  readonly of: BallClass;
  readonly hit: (ball: Ball) => boolean | undefined;
  readonly part?: (ball: Ball) => string;
}

/** As a ball figure, of points: one point counts once, however many balls. */
export interface PointFigure extends Figure {
  readonly unit: "points";
  readonly hit: (point: PlayedPoint) => boolean | undefined;
  readonly part?: (point: PlayedPoint) => string;
}

/** As a ball figure, with the moments of a point that are known by their count: so many, all hits or all not. */
export interface MomentFigure extends Figure {
  readonly unit: "moments";
  readonly of: BallClass;
  readonly hit: (ball: Ball, point: PlayedPoint) => boolean | undefined;
  readonly counted: (point: PlayedPoint) => number;
  readonly isCountedHit: boolean;
}

export type FigureDef = BallFigure | PointFigure | MomentFigure;

export const DRAWN: readonly ChartingLevel[] = ["key", "every"];
export const EVERY_BALL: readonly ChartingLevel[] = ["every"];
export const ANY_LEVEL: readonly ChartingLevel[] = ["score", "key", "every"];
