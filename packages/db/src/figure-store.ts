import type { Side } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";
import type { MatchFormat, Surface } from "@courtloom/tennis";

/** A match that a player has a tally of. */
export interface ChartedMatch {
  readonly matchId: string;
  readonly title: string;
  readonly playedOn: string;
  readonly side: Side;
  readonly opponent: { readonly playerId: string; readonly displayName: string };
  readonly format: MatchFormat;
  /** Its own, else its day's; null: not known. */
  readonly surface: Surface | null;
  /** Last position of its log. */
  readonly head: number;
}

/** A match's whole log in order, and who charted in which lane. */
export interface MatchLog {
  readonly matchId: string;
  readonly entries: readonly LoggedEntry[];
  readonly lanes: readonly { readonly laneId: string; readonly chartist: string }[];
}

/** One fit of an academy; `fit` is what the writer gave, unchanged. */
export interface ChoiceFitRow {
  /** Counts 1, 2, 3 … in its academy. */
  readonly version: number;
  readonly fittedMs: number;
  readonly fit: unknown;
}

/** What figures over many matches read, and the fits that they stand beside. Rules DB70 to DB73. */
export interface FigureStore {
  /** The latest first, at most `limit`. */
  readonly chartedMatches: (args: {
    readonly academyId: string;
    readonly playerId: string;
    readonly limit: number;
  }) => Promise<readonly ChartedMatch[]>;
  /** In any order; a match that is not there, or has no entry, is left out. */
  readonly matchLogs: (args: {
    readonly academyId: string;
    readonly matchIds: readonly string[];
  }) => Promise<readonly MatchLog[]>;
  /** The newest fit, or the one of a version. */
  readonly choiceFit: (args: {
    readonly academyId: string;
    readonly version?: number;
  }) => Promise<ChoiceFitRow | undefined>;
  /** Adds the version after the newest; `undefined` when somebody else added one meanwhile, and nothing was written. */
  readonly addChoiceFit: (args: {
    readonly academyId: string;
    readonly fit: unknown;
  }) => Promise<{ readonly version: number } | undefined>;
}
