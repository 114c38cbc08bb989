import type { FigureName, OpponentLevel, RateRow, Unit } from "@courtloom/decisions";
import type { ChartingLevel } from "@courtloom/match-log";

/** What is expected of a rate in one coming match: mean and central 90 %. */
export interface UsualRow {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  /** Whose past weighs more. */
  readonly source: "own" | "academy";
}

/** `level`: charted at a level that may not feed the figure. `netCord`, `calledOut`: that decided the point. */
export type LeftOutWhy = "level" | "netCord" | "calledOut";

/** A figure over a player's matches. */
export interface FigureRow extends RateRow {
  readonly id: FigureName;
  readonly unit: Unit;
  /** From all of the player's matches, whatever the filter; null while the academy has charted too little. */
  readonly usual: UsualRow | null;
  /** How many matches anything was counted in. */
  readonly matches: number;
  /** Levels that fed it, with what each told. */
  readonly levels: readonly { readonly level: ChartingLevel; readonly x: number; readonly n: number }[];
  /** Points of the filter that no attempt was counted in, and why; only those that have any. */
  readonly leftOut: readonly { readonly why: LeftOutWhy; readonly points: number }[];
  /** Over the same filter but for the opponent's level, each apart. */
  readonly byOpponent: Readonly<Record<OpponentLevel, { readonly x: number; readonly n: number }>>;
  /** Parts that were met ("behindBaseline.left", "5+"), in the order of their names. */
  readonly parts: readonly (RateRow & { readonly part: string })[];
}
