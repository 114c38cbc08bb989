import type { Entry, EntryBody } from "@courtloom/match-log";
import type {
  LaneAppend,
  LaneAppendReply,
  LaneBeat,
  LaneBeatReply,
  LaneChartist,
  LaneOpen,
  LaneOpenReply,
  Leader,
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
 *
 * A lane that was refused because another one leads stays stopped and asks again from time to time, to hear
 * how that one fares; only a person's take-over asks for more.
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
  /** Who leads the match instead of this lane, as the server said last; absent while this lane leads, or nobody. */
  readonly leader?: Leader;
  /** A person asked for the lead; said with the next `lane.open`. */
  readonly takesOver?: true;
  /** Who wrote the match's other lanes, as the server said last. */
  readonly others?: readonly LaneChartist[];
  readonly requests: number;
  /** Failures in a row. */
  readonly failures: number;
  /** Waits before it tries again. */
  readonly waiting: boolean;
  /** Entries per message; halved when the server finds a message too large. */
  readonly batchSize: number;
  /** True while an entry could not be stored: it is held by the open page alone. */
  readonly unstored: boolean;
  /** Whole minutes that this phone's clock is ahead of the server's, negative behind; absent when they agree well enough. */
  readonly clockAheadMinutes?: number;
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
  /** Everything that the phone could not store before is stored now. */
  | { readonly type: "caughtUp" }
  /** The storage holds another entry with this number: a second page writes to the same lane. */
  | { readonly type: "taken"; readonly laneId: string; readonly n: number }
  | { readonly type: "forkStored"; readonly laneId: string; readonly count: number; readonly safe: boolean }
  | { readonly type: "openAnswered"; readonly request: number; readonly reply: LaneOpenReply }
  | { readonly type: "appendAnswered"; readonly request: number; readonly reply: LaneAppendReply }
  | { readonly type: "beatAnswered"; readonly laneId: string; readonly reply: LaneBeatReply }
  | { readonly type: "retryDue" }
  | { readonly type: "beatDue" }
  /** A person asked to try again after a refusal. */
  | { readonly type: "tryAgain" }
  /** A person asked to lead the match from now on. */
  | { readonly type: "takeOver" }
  /** A person wants to chart beside whoever leads. */
  | { readonly type: "chartSecond" }
  /** The log says that the lead went elsewhere: who has it now is to be heard. */
  | { readonly type: "leadMoved" }
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
