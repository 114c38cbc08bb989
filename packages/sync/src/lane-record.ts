import type { ByPlayer } from "@courtloom/core";
import type { ChartingLevel, LoggedEntry } from "@courtloom/match-log";
import type { RejectedEntry } from "@courtloom/protocol";

/** What a phone keeps of one lane, beside its entries. Plain data, stored as it is. */
export interface LaneRecord {
  readonly laneId: string;
  readonly matchId: string;
  readonly courtName: string;
  /** Who charts in this lane: a lane never changes hands. */
  readonly chartist: string;
  /** Display names, so that the pad can be opened again without a signal. */
  readonly names: ByPlayer<string>;
  readonly level: ChartingLevel;
  /** This lane is kept beside the score, whoever leads. */
  readonly second?: true;
  /** A signed-in member of staff charts it, so that a phone without a network still knows who has to speak for it. */
  readonly staff?: boolean;
  /** The match's first entry; absent until the server answered once. */
  readonly opening?: LoggedEntry;
  /** The highest n that the server is known to hold; 0 for none. Falls when the server lost entries. */
  readonly acked: number;
  readonly epoch: number;
  readonly incarnation?: string;
  /** Entries that the server will never take; they stay on the phone. */
  readonly rejected: readonly RejectedEntry[];
  /** Set when another lane went on from here because two writers had used one number. */
  readonly continuedBy?: string;
  /** The first n that went on there; with `continuedBy`. */
  readonly continuedFrom?: number;
  /** When this phone learned that the match is sealed. */
  readonly sealedWallMs?: number;
  readonly startedWallMs: number;
}
