import type { LineSpot } from "@courtloom/decisions";

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
