import type { ByPlayer, Result, Side } from "@courtloom/core";
import type {
  ChartingLevel,
  CoachingMode,
  Entry,
  LoggedEntry,
  MatchOpened,
  MatchView,
} from "@courtloom/match-log";
import type { MatchFormat } from "@courtloom/tennis";

/** What the rooms need of the match log and of the day's tables; `main.ts` gives them the database's. */

export interface Unavailable {
  readonly code: "unavailable";
}

export interface MatchRef {
  readonly academyId: string;
  readonly matchId: string;
}

/** Who writes a lane: a member, or a courtside session. */
export interface LaneOwner {
  readonly kind: "member" | "courtside";
  readonly id: string;
}

/** The lane that leads; `desk` owns lanes that were imported. */
export interface LeadLane {
  readonly laneId: string;
  readonly chartist: string;
  readonly owner: { readonly kind: LaneOwner["kind"] | "desk"; readonly id: string };
}

export interface LaneIsOpen {
  readonly incarnation: string;
  readonly epoch: number;
  readonly cursor: number;
  readonly head: number;
  /** Absent while nobody leads. */
  readonly lead?: LeadLane;
}

export type OpenLaneRefused =
  | { readonly code: "unknown_match" | "not_open" | "sealed" | "other_owner" }
  | { readonly code: "lead_taken"; readonly lead: LeadLane };

export type AppendItem =
  | { readonly n: number; readonly entry: Entry }
  | {
      readonly n: number;
      readonly rejected: { readonly code: "bad_shape" | "not_allowed"; readonly raw: unknown };
    };

export interface Appended {
  readonly kind: "appended" | "duplicate";
  readonly upTo: number;
  readonly head: number;
  /** What this call added, in order of pos. */
  readonly logged: readonly LoggedEntry[];
}

export type AppendRefused =
  | { readonly code: "unknown_match" | "unknown_lane" }
  | { readonly code: "gap"; readonly expect: number }
  | { readonly code: "identity_conflict"; readonly n: number };

export interface LogPage {
  readonly entries: readonly LoggedEntry[];
  readonly head: number;
}

export interface MatchHead extends MatchRef {
  readonly dayId: string | null;
  readonly courtId: string | null;
  readonly pos: number;
  readonly epoch: number;
  readonly leadLaneId: string | null;
  readonly chartist: string | null;
  readonly level: ChartingLevel | null;
  readonly sealed: boolean;
  readonly heardMs: number | null;
  readonly unsent: number | null;
}

export interface Heard extends MatchRef {
  readonly heardMs: number;
  readonly unsent: number;
}

export interface Hint {
  readonly matchId: string;
  readonly pos: number;
}

type Answer<T, E = never> = Promise<Result<T, E | Unavailable>>;

/** The match log on disk. Acknowledged means committed. Nothing here rejects. */
export interface LogStore {
  readonly incarnation: () => Answer<string>;
  readonly openMatch: (
    open: MatchRef & { readonly opened: MatchOpened },
  ) => Answer<
    { readonly opening: LoggedEntry; readonly head: number },
    { readonly code: "unknown_match" | "already_opened" }
  >;
  readonly openLane: (
    open: MatchRef & {
      readonly laneId: string;
      readonly chartist: string;
      readonly owner: LaneOwner;
      readonly level: ChartingLevel;
      /** The lead lane that this one replaces, if that still leads. */
      readonly takeOver?: string;
      /** A new lane beside the score; it never leads. */
      readonly second?: true;
    },
  ) => Answer<LaneIsOpen, OpenLaneRefused>;
  /** The lanes of a match with who charts in them. */
  readonly lanes: (
    match: MatchRef,
  ) => Answer<
    readonly { readonly laneId: string; readonly chartist: string }[],
    { readonly code: "unknown_match" }
  >;
  /** Until when the lead of `laneId` may be taken by whom it was handed to; undefined when it was not. */
  readonly handOver: (
    ask: MatchRef & { readonly laneId: string; readonly to: LaneOwner },
  ) => Answer<{ readonly untilMs: number } | undefined>;
  readonly append: (
    append: MatchRef & { readonly laneId: string; readonly items: readonly AppendItem[] },
  ) => Answer<Appended, AppendRefused>;
  readonly read: (
    read: MatchRef & { readonly after: number; readonly limit: number },
  ) => Answer<LogPage, { readonly code: "unknown_match" }>;
  readonly head: (match: MatchRef) => Answer<MatchHead, { readonly code: "unknown_match" }>;
  readonly heads: (since?: string) => Answer<{ readonly heads: readonly MatchHead[]; readonly next: string }>;
  readonly recordHeard: (heard: readonly Heard[]) => Answer<void>;
  readonly notify: (hint: Hint) => void;
  readonly listen: (heard: (hint: Hint) => void) => Answer<() => Promise<void>>;
}

/** A match as the day's tables have it, as far as the rooms use it. */
export interface MatchCard {
  readonly academyId: string;
  readonly matchId: string;
  readonly dayId: string | null;
  readonly courtId: string | null;
  readonly courtNo: number | null;
  readonly players: ByPlayer<{
    readonly playerId: string;
    readonly displayName: string;
    readonly hand: "right" | "left" | "unknown";
    readonly own: boolean;
    /** The academy's own scale; null: not known. */
    readonly level: number | null;
  }>;
  readonly partners: ByPlayer<{ readonly displayName: string } | null>;
  readonly format: MatchFormat;
  readonly firstServer: Side | null;
  readonly doubles: boolean;
  readonly coachingMode: CoachingMode;
  readonly stage: "waiting" | "open" | "over" | "sealed";
}

export interface CourtCard {
  readonly courtId: string;
  readonly no: number;
  readonly name: string;
  readonly current: MatchCard | null;
  /** Waiting after `current`, in order of play. */
  readonly next: readonly MatchCard[];
}

export interface DayBoard {
  readonly day: { readonly dayId: string; readonly name: string };
  readonly academyName: string;
  readonly timeZone: string;
  /** By court number. */
  readonly courts: readonly CourtCard[];
}

/** The day's tables. `undefined`: this academy has no such thing. Rejects when the database cannot be asked. */
export interface DayStore {
  readonly matchCard: (match: MatchRef) => Promise<MatchCard | undefined>;
  readonly dayBoard: (day: {
    readonly academyId: string;
    readonly dayId: string;
  }) => Promise<DayBoard | undefined>;
  /** The match's first entry, frozen as things stand now. */
  readonly openingOf: (card: MatchCard) => Promise<MatchOpened>;
  /** The fold of an open match as it now stands: over or not, and its tallies when it is over. Repeatable. */
  readonly settle: (match: MatchRef, view: MatchView) => Promise<void>;
}
