import type { Entry } from "@courtloom/match-log";
import { z } from "zod";
import { idField, versionField } from "../field.ts";
import { MAX_BATCH_ENTRIES } from "../limits.ts";
import type { Refusal } from "../refusal.ts";

/** One batch of a lane's entries, in order of n. Only one is in flight per lane. */
export interface LaneAppend {
  readonly v: number;
  readonly matchId: string;
  readonly laneId: string;
  readonly incarnation: string;
  readonly entries: readonly Entry[];
}

/** The envelope only: each entry is parsed by itself, so that one bad entry does not hold up the others. */
export const laneAppendShape = z.strictObject({
  v: versionField,
  matchId: idField,
  laneId: idField,
  incarnation: idField,
  entries: z.array(z.unknown()).min(1).max(MAX_BATCH_ENTRIES),
});

/** An entry that the server will never take: kept on the phone and shown; the lane goes on after it. */
export interface RejectedEntry {
  readonly n: number;
  readonly code: "bad_shape" | "not_allowed";
}

/** Committed up to and including `upTo`. `duplicate`: all of it was there already. */
export interface LaneAppended {
  readonly ok: true;
  readonly kind: "appended" | "duplicate";
  readonly upTo: number;
  readonly head: number;
  readonly rejected: readonly RejectedEntry[];
}

/** The server expects n = `expect`: the phone rewinds to it. */
export interface LaneGap {
  readonly ok: false;
  readonly code: "gap";
  readonly expect: number;
}

/** Another entry with this n is committed: the phone must start a new lane and keep both. */
export interface IdentityConflict {
  readonly ok: false;
  readonly code: "identity_conflict";
  readonly n: number;
}

/** The log was restored or replaced since: the phone opens the lane again and refills it. */
export interface OtherIncarnation {
  readonly ok: false;
  readonly code: "other_incarnation";
  readonly incarnation: string;
}

export type LaneAppendReply = LaneAppended | LaneGap | IdentityConflict | OtherIncarnation | Refusal;
