import type { Entry, EntryBody } from "@courtloom/match-log";
import type {
  LaneAppend,
  LaneAppendReply,
  LaneBeat,
  LaneBeatReply,
  LaneOpen,
  LaneOpenReply,
  RefusalCode,
} from "@courtloom/protocol";
import type { LaneRecord } from "./lane-record.ts";

/**
 * Where the lane stands towards the server.
 *
 *   closed ──lane.open──▶ open ──lane.append…──▶ open
 *     ▲  ▲                 │ │
 *     │  └──link down──────┘ ├─two writers, one number──▶ forking ──▶ closed (of a new lane)
 *     └──a person tries again── stopped ◀──refused for good
 */
export type LanePhase = "closed" | "open" | "stopped" | "forking";

/** A message whose answer is awaited. At most one at a time; beats go beside it. */
export interface InFlight {
  readonly request: number;
  readonly kind: "open" | "append";
  /** The last n in the batch; 0 for an opening. */
  readonly upTo: number;
}

export interface LaneState {
  readonly record: LaneRecord;
  /** Entries that the phone has stored, dense from n = 1. */
  readonly entries: readonly Entry[];
  /** Numbered, handed to the storage, not yet known to be stored. */
  readonly pending: readonly Entry[];
  readonly link: "up" | "down";
  readonly phase: LanePhase;
  /** Why it stopped; only in phase `stopped`. */
  readonly stoppedBy?: RefusalCode;
  readonly inFlight?: InFlight;
  readonly requests: number;
  /** Failures in a row. */
  readonly failures: number;
  /** Waits before it tries again. */
  readonly waiting: boolean;
  /** Entries per message; halved when the server finds a message too large. */
  readonly batchSize: number;
  /** True once the phone could not store an entry: it is held by the open page alone. */
  readonly unstored: boolean;
}

/** What the machine needs from outside; the same values give the same step. */
export interface LaneEnv {
  /** In [0, 1). */
  readonly random: () => number;
  readonly wallMs: () => number;
  /** A new lane's id. */
  readonly laneId: () => string;
}

export type LaneEvent =
  | { readonly type: "linkUp" }
  | { readonly type: "linkDown" }
  /** A person charted something. */
  | {
      readonly type: "charted";
      readonly id: string;
      readonly atMs: number;
      readonly wallMs: number;
      readonly body: EntryBody;
    }
  | { readonly type: "stored"; readonly laneId: string; readonly n: number; readonly safe: boolean }
  /** The storage holds another entry with this number: a second page writes to the same lane. */
  | { readonly type: "taken"; readonly laneId: string; readonly n: number }
  | { readonly type: "forkStored"; readonly laneId: string; readonly count: number; readonly safe: boolean }
  | { readonly type: "openAnswered"; readonly request: number; readonly reply: LaneOpenReply }
  | { readonly type: "appendAnswered"; readonly request: number; readonly reply: LaneAppendReply }
  | { readonly type: "beatAnswered"; readonly reply: LaneBeatReply }
  | { readonly type: "retryDue" }
  | { readonly type: "beatDue" }
  /** A person asked to try again after a refusal. */
  | { readonly type: "tryAgain" }
  | { readonly type: "sealed"; readonly wallMs: number };

export type LaneAction =
  | { readonly type: "store"; readonly laneId: string; readonly entry: Entry }
  | { readonly type: "saveLane"; readonly record: LaneRecord }
  | {
      readonly type: "fork";
      readonly closed: LaneRecord;
      readonly opened: LaneRecord;
      readonly entries: readonly Entry[];
    }
  | { readonly type: "sendOpen"; readonly request: number; readonly message: LaneOpen }
  | { readonly type: "sendAppend"; readonly request: number; readonly message: LaneAppend }
  | { readonly type: "sendBeat"; readonly message: LaneBeat }
  /** Each replaces the timer of its kind. */
  | { readonly type: "retryIn"; readonly ms: number }
  | { readonly type: "beatIn"; readonly ms: number };

export interface LaneStep {
  readonly state: LaneState;
  readonly actions: readonly LaneAction[];
}
