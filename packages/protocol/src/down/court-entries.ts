import type { LoggedEntry } from "@courtloom/match-log";

/** Newly committed entries, dense. A mirror applies them if the first is `last + 1`, else reads the gap. */
export interface CourtEntries {
  readonly matchId: string;
  readonly incarnation: string;
  readonly entries: readonly LoggedEntry[];
}
