import type { Side } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";
import type { MatchFormat, Surface } from "@courtloom/tennis";

/** A match that a player has a tally of. */
export interface ChartedMatchRow {
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
export interface MatchLogRow {
  readonly matchId: string;
  readonly entries: readonly LoggedEntry[];
  readonly lanes: readonly { readonly laneId: string; readonly chartist: string }[];
}

export interface ChoiceFitRow {
  /** Counts 1, 2, 3 … in its academy. */
  readonly version: number;
  readonly fittedMs: number;
  /** As its writer gave it. */
  readonly fit: unknown;
}

/** What figures over many matches read, and the fits that they stand beside. */
export interface FigureStore {
  /** The latest first, at most `limit`. */
  readonly chartedMatches: (args: {
    readonly academyId: string;
    readonly playerId: string;
    readonly limit: number;
  }) => Promise<readonly ChartedMatchRow[]>;
  /** In any order; a match that is not there, or has no entry, is left out. */
  readonly matchLogs: (args: {
    readonly academyId: string;
    readonly matchIds: readonly string[];
  }) => Promise<readonly MatchLogRow[]>;
  /** The newest fit, or the one of a version. */
  readonly choiceFit: (args: {
    readonly academyId: string;
    readonly version?: number;
  }) => Promise<ChoiceFitRow | undefined>;
}
