import type { Result } from "@courtloom/core";
import type { Entry, LoggedEntry } from "@courtloom/match-log";
import type { LaneRecord } from "./lane-record.ts";

/**
 * `taken`: another page of this browser already stored an entry with this number in this lane.
 * `unavailable`: the browser would not store it (private mode, full, blocked).
 */
export type OutboxError = "taken" | "unavailable";

/** What this phone knows of a match's log: entries of all lanes, dense from pos 1, of one incarnation. */
export interface KnownLog {
  readonly matchId: string;
  readonly incarnation: string;
  readonly entries: readonly LoggedEntry[];
}

/**
 * Where entries wait for the server and stay after it has them. Nothing is deleted because of a
 * refusal; only `sweep` deletes. Every write has reached the browser's storage when its promise resolves.
 */
export interface Outbox {
  /** False when it lives in memory only and is gone with the page. */
  readonly durable: boolean;
  /** All lanes of this device, oldest first. */
  readonly lanes: () => Promise<readonly LaneRecord[]>;
  /** A lane's entries by n, dense from 1; empty for an unknown lane. */
  readonly entries: (laneId: string) => Promise<readonly Entry[]>;
  readonly saveLane: (record: LaneRecord) => Promise<Result<void, OutboxError>>;
  /** Stores one entry; never overwrites. */
  readonly add: (laneId: string, entry: Entry) => Promise<Result<void, OutboxError>>;
  /** Marks one lane as continued and stores the one that goes on with its entries, all or nothing. */
  readonly fork: (
    closed: LaneRecord,
    opened: LaneRecord,
    entries: readonly Entry[],
  ) => Promise<Result<void, OutboxError>>;
  readonly log: (matchId: string) => Promise<KnownLog | undefined>;
  readonly saveLog: (log: KnownLog) => Promise<Result<void, OutboxError>>;
  /** Deletes lanes whose match was sealed 14 days ago or earlier and whose entries the server all has; returns how many. */
  readonly sweep: (wallMs: number) => Promise<number>;
}
