import type { ByPlayer } from "@courtloom/core";
import type { EntryBody, MatchView } from "@courtloom/match-log";

/** What every mend needs: the match, who plays, and how an entry is written. */
export interface Mending {
  readonly view: MatchView;
  readonly names: ByPlayer<string>;
  readonly epoch: number;
  /** Who charted, by lane, as far as this phone knows. */
  readonly nameOf: (laneId: string) => string | undefined;
  readonly chart: (body: EntryBody) => Promise<void>;
}
