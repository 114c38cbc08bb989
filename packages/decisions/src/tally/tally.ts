import type { ChartingLevel } from "@courtloom/match-log";
import type { FigureName } from "../figures/registry.ts";
import type { CellKey } from "./cell-key.ts";

/** x of n as it is kept: `[x, n]`. */
export type TallyCount = readonly [x: number, n: number];

/**
 * What followed a choice in a situation: balls; those missed; balls of points won and lost; points that any of them
 * was struck in; balls judged off plan or passed up. Won and lost leave out points that the net cord decided.
 */
export type TallyCell = readonly [
  n: number,
  missed: number,
  won: number,
  lost: number,
  points: number,
  against: number,
];

/** A figure, or a part of one ("builtUp.2"). */
export type TallyName = FigureName | `${FigureName}.${string}`;

/** What one level told. What was never counted is absent, which is 0 of 0. */
export interface LevelTally {
  readonly counts: Readonly<Partial<Record<TallyName, TallyCount>>>;
  readonly cells: Readonly<Record<CellKey, TallyCell>>;
}

/** Levels of a tally; `unknown` holds counts of before levels were kept apart. */
export const TALLY_LEVELS = ["score", "key", "every", "unknown"] as const satisfies readonly (
  | ChartingLevel
  | "unknown"
)[];
export type TallyLevel = (typeof TALLY_LEVELS)[number];

/**
 * What one player did in one match, as counts alone, each level by itself; points are opened from the log. Adding two
 * tallies gives a tally. Levels that nothing was charted at are absent. SPEC D7, D38.
 */
export interface Tally {
  readonly version: 2;
  readonly levels: Readonly<Partial<Record<TallyLevel, LevelTally>>>;
}

/** Of no points; adding it changes nothing. */
export const EMPTY_TALLY: Tally = { version: 2, levels: {} };
