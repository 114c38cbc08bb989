import type { Result } from "@courtloom/core";
import type { ChartingLevel, Entry, EntryBody, LoggedEntry, MatchOpened } from "@courtloom/match-log";

/** The database could not be reached or ended the call; the same call may succeed later. Nothing was half done. */
export interface Unavailable {
  readonly code: "unavailable";
}

/** Names a match within its academy; taken from the principal, never from a message alone. */
export interface MatchRef {
  readonly academyId: string;
  readonly matchId: string;
}

/** Who writes a lane: a member by member id, or a courtside session by session id. */
export interface LaneOwner {
  readonly kind: "member" | "courtside";
  readonly id: string;
}

export interface OpenMatch extends MatchRef {
  /** `opened.matchId` must be `matchId`. */
  readonly opened: MatchOpened;
}

export interface MatchIsOpen {
  readonly opening: LoggedEntry;
  /** Last pos. */
  readonly head: number;
}

/** `already_opened`: with another opening; the same one again answers ok. */
export interface OpenMatchRefused {
  readonly code: "unknown_match" | "already_opened";
}

export interface OpenLane extends MatchRef {
  /** Random UUID made on the device. */
  readonly laneId: string;
  /** Name shown beside the score. */
  readonly chartist: string;
  readonly owner: LaneOwner;
  readonly level: ChartingLevel;
  /**
   * Id of the lead lane that a new lane replaces. Who may do so, and when, is for the caller to judge; it is
   * done only if that lane still leads. A lane that exists resumes as it is.
   */
  readonly takeOver?: string;
  /**
   * A new lane that is kept beside the score, whoever leads, also while nobody does. It never leads; a lane
   * that exists resumes as it is.
   */
  readonly second?: true;
}

/** The lane that leads. */
export interface LeadLane {
  readonly laneId: string;
  readonly chartist: string;
  readonly owner: { readonly kind: LaneOwner["kind"] | "desk"; readonly id: string };
}

export interface LaneIsOpen {
  readonly incarnation: string;
  /** `SECOND_EPOCH` of a second lane. */
  readonly epoch: number;
  /** The highest n taken in this lane; 0 when new. */
  readonly cursor: number;
  readonly head: number;
  /** Who leads now: this lane, or another one; absent while nobody does. */
  readonly lead?: LeadLane;
}

/**
 * `not_open`: the match has no opening yet. `sealed`: a new lane on a sealed match (a lane that exists
 * resumes, so that what a phone charted offline still arrives). `other_owner`: the lane belongs to
 * somebody else. `lead_taken`: another lane has the lead.
 */
export type OpenLaneRefused =
  | { readonly code: "unknown_match" | "not_open" | "sealed" | "other_owner" }
  | { readonly code: "lead_taken"; readonly lead: LeadLane };

/** Who charts, or charted, in a lane. */
export interface LaneChartist {
  readonly laneId: string;
  readonly chartist: string;
}

/** Asks whether the lead `laneId` was handed over to somebody. */
export interface HandOverAsk extends MatchRef {
  readonly laneId: string;
  readonly to: LaneOwner;
}

/** The lead was handed over: whom it was handed to may take it until `untilMs`, ms since 1970. */
export interface HandedLead {
  readonly untilMs: number;
}

/** An entry that was read, or one that could not be taken and is kept aside as it came. */
export type AppendItem =
  | { readonly n: number; readonly entry: Entry }
  | { readonly n: number; readonly rejected: RejectedItem };

export interface RejectedItem {
  readonly code: "bad_shape" | "not_allowed";
  /** As it came over the wire. */
  readonly raw: unknown;
}

export interface Append extends MatchRef {
  readonly laneId: string;
  /** In order of n, without holes. */
  readonly items: readonly AppendItem[];
}

export interface Appended {
  /** `duplicate`: every item was there already and nothing was written. */
  readonly kind: "appended" | "duplicate";
  /** The lane's cursor: everything up to here is committed. */
  readonly upTo: number;
  readonly head: number;
  /** What this call added, in order of pos. */
  readonly logged: readonly LoggedEntry[];
}

/** `gap`: n = `expect` has to come first. `identity_conflict`: another entry has this n, or this entry's id is taken. */
export type AppendRefused =
  | { readonly code: "unknown_match" | "unknown_lane" }
  | { readonly code: "gap"; readonly expect: number }
  | { readonly code: "identity_conflict"; readonly n: number };

export interface ReadLog extends MatchRef {
  /** Last pos that the reader has; 0 for all. */
  readonly after: number;
  /** At most so many entries, 1 or more. */
  readonly limit: number;
}

export interface LogPage {
  /** Dense from `after + 1`; empty at the end, or when the match is not open. */
  readonly entries: readonly LoggedEntry[];
  readonly head: number;
}

/** Where a match's log stands. */
export interface MatchHead extends MatchRef {
  readonly dayId: string | null;
  readonly courtId: string | null;
  /** 0 until the match is opened. */
  readonly pos: number;
  readonly epoch: number;
  readonly leadLaneId: string | null;
  /** Chartist of the lead lane. */
  readonly chartist: string | null;
  readonly level: ChartingLevel | null;
  readonly sealed: boolean;
  /** When the court's phone was last heard, ms since 1970 by the server's clock; null: never. */
  readonly heardMs: number | null;
  readonly unsent: number | null;
}

/** Heads that changed, of every academy. `next` goes into the following call; some heads may come twice. */
export interface ChangedHeads {
  readonly heads: readonly MatchHead[];
  readonly next: string;
}

export interface Heard extends MatchRef {
  readonly heardMs: number;
  readonly unsent: number;
}

export interface AppendDesk extends MatchRef {
  readonly body: EntryBody;
  /** Give the same id again to make a repeated call harmless; a new one is made if absent. */
  readonly entryId?: string;
}

/** A match has grown: read it from the last pos you have. A hint only; it may be lost or come late. */
export interface Hint {
  readonly matchId: string;
  readonly pos: number;
}

/** The match log on disk. Acknowledged means committed. Rules ES1 to ES18 and ES30 to ES32. */
export interface EntryStore {
  /** Id of this log; another one after a restore. */
  readonly incarnation: () => Promise<Result<string, Unavailable>>;
  /** Writes the opening at pos 1 in the desk's lane. */
  readonly openMatch: (open: OpenMatch) => Promise<Result<MatchIsOpen, OpenMatchRefused | Unavailable>>;
  /** Starts or resumes a lane; the first lane of a match gets the lead (epoch 1), one that takes over the next epoch, a second one `SECOND_EPOCH`. */
  readonly openLane: (open: OpenLane) => Promise<Result<LaneIsOpen, OpenLaneRefused | Unavailable>>;
  /** The lanes of a match but the desk's, in the order in which they were opened; none while it waits. */
  readonly lanes: (
    match: MatchRef,
  ) => Promise<Result<readonly LaneChartist[], { readonly code: "unknown_match" } | Unavailable>>;
  /** Whether the lead of `laneId` was handed to `to` by a code that was not withdrawn; undefined: no. */
  readonly handOver: (ask: HandOverAsk) => Promise<Result<HandedLead | undefined, Unavailable>>;
  /** Commits a batch of a lane whole or not at all. */
  readonly append: (append: Append) => Promise<Result<Appended, AppendRefused | Unavailable>>;
  /** Writes an entry of the desk (epoch 0): a walkover, a correction after sealing. */
  readonly appendDesk: (
    append: AppendDesk,
  ) => Promise<Result<Appended, { readonly code: "unknown_match" | "not_open" } | Unavailable>>;
  /** Writes `MatchSealed` in the desk's lane; on a sealed match it changes nothing. */
  readonly sealMatch: (
    match: MatchRef,
  ) => Promise<Result<Appended, { readonly code: "unknown_match" | "not_open" } | Unavailable>>;
  readonly read: (
    read: ReadLog,
  ) => Promise<Result<LogPage, { readonly code: "unknown_match" } | Unavailable>>;
  readonly head: (
    match: MatchRef,
  ) => Promise<Result<MatchHead, { readonly code: "unknown_match" } | Unavailable>>;
  /** Without `since`: all matches that are opened and not sealed. */
  readonly heads: (since?: string) => Promise<Result<ChangedHeads, Unavailable>>;
  /** Keeps the latest word of each phone; an older one than kept changes nothing. Unknown matches are passed over. */
  readonly recordHeard: (heard: readonly Heard[]) => Promise<Result<void, Unavailable>>;
  /** Tells all nodes, this one too, within about 50 ms; calls in between are drawn together. */
  readonly notify: (hint: Hint) => void;
  /** Calls back for each hint until the returned function is called. */
  readonly listen: (heard: (hint: Hint) => void) => Promise<Result<() => Promise<void>, Unavailable>>;
}
