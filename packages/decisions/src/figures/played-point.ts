import type { ChartingLevel, Serve } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";

/** A counted point as one charted player played it. */
export interface PlayedPoint {
  readonly id: string;
  readonly level: ChartingLevel;
  /** `undefined` where the net cord or a disputed call decided. */
  readonly won: boolean | undefined;
  readonly isServing: boolean;
  /** `undefined` where nobody told it. */
  readonly serve: Serve | undefined;
  /** Strokes of the rally, the serve counted; only at every ball. */
  readonly strokes: number | undefined;
  /** The player's own counted balls, in order. */
  readonly balls: readonly Ball[];
  /** Chances passed up that are known by their count alone: the plan says that a ball that sits up is on. */
  readonly satUpKept: number;
  /** The plan says that a ball that sits up is on, whatever else. */
  readonly isSatUpOn: boolean;
}
