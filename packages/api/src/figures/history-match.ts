import type { Side } from "@courtloom/core";
import type { OpponentLevel } from "@courtloom/decisions";
import type { ChartingLevel } from "@courtloom/match-log";
import type { Surface } from "@courtloom/tennis";

/** One of a player's charted matches. */
export interface HistoryMatch {
  readonly matchId: string;
  readonly title: string;
  /** As `2026-05-30`. */
  readonly playedOn: string;
  readonly side: Side;
  readonly opponent: { readonly playerId: string; readonly displayName: string };
  /** By the levels frozen when it was opened; the numbers are of the academy's own scale. */
  readonly opponentLevel: OpponentLevel;
  readonly levelThen: number | null;
  readonly opponentLevelThen: number | null;
  /** Null: not known. */
  readonly surface: Surface | null;
  readonly format: string;
  /** Levels that its points were charted at, the finest last. */
  readonly levels: readonly ChartingLevel[];
  readonly chartists: readonly string[];
  /** Points charted of it, and those that the filter lets through. */
  readonly points: number;
  readonly pointsUsed: number;
  /** The score from the player's side: "6-4 3-6 [10-7]". */
  readonly score: string;
}

/** What a filter can be set to: whatever any of the player's matches has. */
export interface FilterChoices {
  readonly first: string | null;
  readonly last: string | null;
  readonly opponents: readonly OpponentLevel[];
  readonly surfaces: readonly (Surface | "notKnown")[];
  readonly formats: readonly string[];
  readonly levels: readonly ChartingLevel[];
  readonly chartists: readonly string[];
}
