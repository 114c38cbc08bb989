import type { DepthStruck } from "@courtloom/tennis";
import type { PlanAim } from "./plan-aim.ts";

/** A difference or a sum with its 90 % interval; `distinguishable`: the interval leaves out 0. */
export interface EstimateRow {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly distinguishable: boolean;
}

/** x of n: balls of points won, of balls of points whose outcome counts. */
export interface WonRow {
  readonly x: number;
  readonly n: number;
}

/** `pays`: more points go with the line; `costs`: more go with the kept ball; else it cannot be told yet. */
export type LineVerdict = "pays" | "costs" | "cantTell";

/** What the line and the kept ball went with in one place. */
export interface LineCell {
  /** Only where both were chosen five times or more. */
  readonly verdict: LineVerdict;
  /** Line less kept, in points won per ball; null where the player chose neither, or nothing was fitted yet. */
  readonly worth: EstimateRow | null;
  readonly line: WonRow;
  readonly kept: WonRow;
  /** The kept balls that were drawn, apart; a touch is in neither. */
  readonly cross: WonRow;
  readonly middle: WonRow;
}

/** By how deep the ball that was answered came down; null: not known. */
export interface LandingCell extends LineCell {
  readonly landing: "short" | "mid" | "deep" | null;
}

export interface LineSpot extends LineCell {
  readonly depth: DepthStruck;
  readonly side: "left" | "right";
  /** What the player's plan of today aims at there; `depends`: on more than the place; null: nothing. */
  readonly plan: PlanAim | null;
  /**
   * `keepButLinePays`: the plan says keep, and more points go with the line. `lineButKeptPays`: the plan says
   * straight, and more points go with the kept ball.
   */
  readonly contradicts: "keepButLinePays" | "lineButKeptPays" | null;
  /** Line balls off the plan of their day, of those judged right or wrong. */
  readonly lineOffPlan: WonRow;
  readonly landings: readonly LandingCell[];
}
