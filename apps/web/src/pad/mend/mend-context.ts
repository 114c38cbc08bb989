import type { ByPlayer } from "@courtloom/core";
import type { EntryBody, MatchView } from "@courtloom/match-log";
import type { EndSeen } from "@courtloom/tennis";

/** What every mend needs: the match, who plays, and how an entry is written. */
export interface Mending {
  readonly view: MatchView;
  readonly names: ByPlayer<string>;
  readonly epoch: number;
  /** This phone's lane: what it charted itself has no name beside it. */
  readonly laneId: string;
  /** Side A's end as it is shown; absent where the charted player is always drawn near, and no ends can be wrong. */
  readonly endOfA?: EndSeen;
  /** Who charted, by lane, as far as this phone knows. */
  readonly nameOf: (laneId: string) => string | undefined;
  readonly chart: (body: EntryBody) => Promise<void>;
}
