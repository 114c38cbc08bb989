import type { PlanAim } from "@courtloom/decisions";
import type { Channel, DepthStruck, LandingDepth } from "@courtloom/tennis";

/** A difference or a sum with its 90 % interval; `distinguishable`: the interval leaves out 0. */
export interface EstimateRow {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly distinguishable: boolean;
}

/** The model that an answer stands on. */
export interface FitRow {
  readonly version: number;
  readonly fittedMs: number;
  /** Own players and matches, charted at every ball, that it was fitted from. */
  readonly players: number;
  readonly matches: number;
  /** Whether the spreads are the academy's own (15 players or more) or the given ones. */
  readonly ownSpread: boolean;
}

/** Points won of balls of points whose outcome counts. */
export interface WonRow {
  readonly x: number;
  readonly n: number;
}

/** `pays`: points go with the line; `costs`: points go with the kept ball; else it cannot be told yet. */
export type LineVerdict = "pays" | "costs" | "cantTell";

/** What the line and the kept ball went with in one place. */
export interface LineCell {
  readonly verdict: LineVerdict;
  /** Line less kept, in points won per ball; null where the player has no ball of either. */
  readonly worth: EstimateRow | null;
  readonly line: WonRow;
  readonly kept: WonRow;
  /** The kept balls that were drawn, apart; a touch is in neither. */
  readonly cross: WonRow;
  readonly middle: WonRow;
}

/** By how deep the ball that was answered came down; null: not known. */
export interface LandingCell extends LineCell {
  readonly landing: Exclude<LandingDepth, "unknown"> | null;
}

export interface LineSpot extends LineCell {
  readonly depth: DepthStruck;
  readonly side: Exclude<Channel, "middle">;
  /** What the player's plan of today aims at there; `depends`: on more than the place; null: nothing. */
  readonly plan: PlanAim | null;
  /**
   * `keepButLinePays`: the plan says keep, the line goes with more points here. `lineButKeptPays`: the plan says
   * straight, the kept ball goes with more.
   */
  readonly contradicts: "keepButLinePays" | "lineButKeptPays" | null;
  /** Line balls there judged off the plan of their day, of those judged right or wrong. */
  readonly lineOffPlan: WonRow;
  readonly landings: readonly LandingCell[];
}

/** Where the line pays: from matches charted at every ball only. */
export interface LineMap {
  readonly player: { readonly playerId: string; readonly displayName: string };
  /** Null: nothing was fitted yet, so no place has a worth. */
  readonly fit: FitRow | null;
  /** From behind the baseline to inside the service line, left before right: always six. */
  readonly spots: readonly LineSpot[];
  /** Matches of the filter charted at every ball, and those that were left out as they were not. */
  readonly matches: number;
  readonly matchesLeftOut: number;
}
