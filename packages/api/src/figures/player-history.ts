import type { FigureRow } from "./figure-row.ts";
import type { HistoryFilter } from "./history-filter.ts";
import type { FilterChoices, HistoryMatch } from "./history-match.ts";

/** An own player's figures over the charted matches that a filter picks. */
export interface PlayerHistory {
  readonly player: { readonly playerId: string; readonly displayName: string; readonly level: number | null };
  readonly filter: HistoryFilter;
  readonly choices: FilterChoices;
  /** All figures in the order of showing, also those without an attempt. */
  readonly figures: readonly FigureRow[];
  /** Matches with a point that the filter lets through, the latest first. */
  readonly matches: readonly HistoryMatch[];
  /** Charted matches in all, whatever the filter. */
  readonly matchesInAll: number;
  /** Only the latest so many were looked at; null: all were. */
  readonly onlyLatest: number | null;
  /** Matches whose log cannot be folded any more; they count nowhere. */
  readonly unreadable: number;
}
