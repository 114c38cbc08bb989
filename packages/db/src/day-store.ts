import type { ByPlayer, Result, Side } from "@courtloom/core";
import type { CoachingMode, Entry, MatchOpened } from "@courtloom/match-log";
import type { MatchFormat, Surface } from "@courtloom/tennis";
import type { FigureStore } from "./figure-store.ts";
import type { PlanStore } from "./plan-store.ts";
import type { WatchStore } from "./watch-store.ts";

/** Shapes that the day's functions take and give: plain data, times in ms since 1970, dates as `2026-05-30`. */

export type Hand = "right" | "left" | "unknown";

export interface Player {
  readonly playerId: string;
  readonly displayName: string;
  readonly hand: Hand;
  readonly birthYear: number | null;
  readonly squad: string | null;
  /** A player of this academy; only own players have figures. */
  readonly own: boolean;
  /** The academy's own scale of playing strength; null: not known. */
  readonly level: number | null;
}

export interface Court {
  readonly courtId: string;
  readonly no: number;
  readonly name: string;
}

export interface Day {
  readonly dayId: string;
  readonly name: string;
  readonly date: string;
}

/** `waiting`: not opened yet. `over`: the score or a person ended it. `sealed`: no more is charted. */
export type MatchStage = "waiting" | "open" | "over" | "sealed";

export interface MatchCard {
  readonly academyId: string;
  readonly matchId: string;
  readonly dayId: string | null;
  readonly courtId: string | null;
  readonly courtNo: number | null;
  /** Order of play on its court, from 1. */
  readonly orderNo: number;
  readonly title: string;
  readonly playedOn: string;
  readonly players: ByPlayer<Player>;
  /** Second player of each side in doubles. */
  readonly partners: ByPlayer<Player | null>;
  readonly format: MatchFormat;
  /** Null until the toss. */
  readonly firstServer: Side | null;
  readonly doubles: boolean;
  readonly coachingMode: CoachingMode;
  /** Sides whose choices are to be charted. */
  readonly subjects: readonly Side[];
  readonly stage: MatchStage;
  readonly createdMs: number;
  readonly openedMs: number | null;
  readonly sealedMs: number | null;
}

export interface BoardCourt extends Court {
  /** The match that was opened last and is neither over nor sealed, else the next one waiting, else the last one over. */
  readonly current: MatchCard | null;
  /** Waiting after `current`, in order of play. */
  readonly next: readonly MatchCard[];
}

export interface DayBoard {
  readonly day: Day;
  readonly academyName: string;
  readonly timeZone: string;
  readonly language: string;
  /** By court number. */
  readonly courts: readonly BoardCourt[];
}

/** One charted player of one finished match. `tally` is what the writer gave, unchanged. */
export interface TallyRow {
  readonly matchId: string;
  readonly playerId: string;
  readonly playedOn: string;
  /** Of the code that counted it. */
  readonly version: string;
  readonly tally: unknown;
}

export interface HistoryRow extends TallyRow {
  readonly side: Side;
  readonly opponent: {
    readonly playerId: string;
    readonly displayName: string;
    readonly level: number | null;
  };
  readonly title: string;
}

export interface NewMatch {
  readonly academyId: string;
  /** Made if absent. */
  readonly matchId?: string;
  readonly dayId: string | null;
  readonly courtId: string | null;
  /** Absent: after the last one of the court. */
  readonly orderNo?: number;
  readonly title?: string;
  /** Needed without a day; with one, the day's date. */
  readonly playedOn?: string;
  readonly playerIds: ByPlayer<string>;
  readonly partnerIds?: ByPlayer<string>;
  readonly format: MatchFormat;
  readonly firstServer?: Side;
  readonly coachingMode?: CoachingMode;
  readonly subjects?: readonly Side[];
  /** Where it differs from its day's, or there is no day. */
  readonly surface?: Surface;
}

/** A whole match that is over, for set-up and demonstrations: written as if charted in one lane. */
export interface ImportMatch {
  readonly match: Omit<NewMatch, "academyId" | "matchId">;
  readonly opened: MatchOpened;
  readonly laneId: string;
  readonly chartist: string;
  /** Of the lane, n = 1, 2, 3 … */
  readonly entries: readonly Entry[];
  readonly sealed: boolean;
  /** The score is final; a sealed match is over in any case. */
  readonly over: boolean;
  /** When the opening was written, ms since 1970. */
  readonly openedMs: number;
  readonly tallies: readonly {
    readonly playerId: string;
    readonly version: string;
    readonly tally: unknown;
  }[];
}

export interface NewPlayer extends Omit<Player, "playerId"> {
  readonly academyId: string;
  /** Made if absent. */
  readonly playerId?: string;
}

export interface NewDay {
  readonly academyId: string;
  /** Made if absent. */
  readonly dayId?: string;
  readonly name: string;
  readonly date: string;
  /** Absent: not known. */
  readonly surface?: Surface;
  /** In order; numbered from 1. A court's id is made if absent. */
  readonly courts: readonly { readonly courtId?: string; readonly name: string }[];
}

export interface NewAcademy {
  /** Made if absent. */
  readonly academyId?: string;
  readonly name: string;
  /** IANA name, such as `Europe/Lisbon`. */
  readonly timeZone: string;
  readonly language: string;
  /** A demonstration academy may be made beside another; at most one of each kind. */
  readonly isDemo: boolean;
  /** Its first member, a director; the account (`userId`) exists already, or is linked later with null. */
  readonly director: { readonly displayName: string; readonly userId: string | null };
}

export interface Academy {
  readonly academyId: string;
  readonly name: string;
  readonly timeZone: string;
  readonly language: string;
  readonly isDemo: boolean;
}

/** Changes to a match before it is opened; `orderNo`, `courtId` and `title` also afterwards. */
export interface MatchChange {
  readonly courtId?: string | null;
  readonly orderNo?: number;
  readonly title?: string;
  readonly format?: MatchFormat;
  readonly firstServer?: Side;
  readonly coachingMode?: CoachingMode;
  readonly subjects?: readonly Side[];
}

/** A director or coach of the academy. */
export interface Member {
  readonly memberId: string;
  readonly role: "director" | "coach";
  readonly displayName: string;
}

export interface NewMember extends Member {
  readonly academyId: string;
  /** Null until an account is linked. */
  readonly userId: string | null;
}

type Refused<Code extends string> = { readonly code: Code };

/**
 * What boards, desks and player files read and write. Every call names its academy, which the caller
 * takes from the principal; rows of another academy do not exist for it. An unreachable database throws
 * an error for which `isUnavailable` holds. Rules DB9 to DB15.
 */
export interface DayStore extends PlanStore, WatchStore, FigureStore {
  /** Whether any academy, a demonstration aside, has been set up. Needs no tenant. */
  readonly hasAcademy: () => Promise<boolean>;
  readonly setupAcademy: (
    academy: NewAcademy,
  ) => Promise<Result<{ readonly academyId: string; readonly memberId: string }, Refused<"already_set_up">>>;
  readonly academy: (args: { readonly academyId: string }) => Promise<Academy | undefined>;
  /** The demonstration academy, if there is one. Needs no tenant. */
  readonly demoAcademyId: () => Promise<string | undefined>;

  /** One who is there already, by id, stays as they are. */
  readonly addMember: (member: NewMember) => Promise<void>;
  /** By name. */
  readonly listMembers: (args: { readonly academyId: string }) => Promise<readonly Member[]>;

  /** Latest date first. */
  readonly listDays: (args: { readonly academyId: string }) => Promise<readonly Day[]>;
  readonly createDay: (
    day: NewDay,
  ) => Promise<{ readonly dayId: string; readonly courtIds: readonly string[] }>;
  readonly dayBoard: (args: {
    readonly academyId: string;
    readonly dayId: string;
  }) => Promise<DayBoard | undefined>;
  /** All matches of a day by court and order; those without a court last. */
  readonly dayMatches: (args: {
    readonly academyId: string;
    readonly dayId: string;
  }) => Promise<readonly MatchCard[]>;

  readonly addMatch: (
    match: NewMatch,
  ) => Promise<
    Result<{ readonly matchId: string }, Refused<"unknown_day" | "unknown_court" | "unknown_player">>
  >;
  readonly changeMatch: (args: {
    readonly academyId: string;
    readonly matchId: string;
    readonly change: MatchChange;
  }) => Promise<Result<MatchCard, Refused<"unknown_match" | "unknown_court" | "already_opened">>>;
  readonly matchCard: (args: {
    readonly academyId: string;
    readonly matchId: string;
  }) => Promise<MatchCard | undefined>;
  /** Called by whoever folds, when the score or a person ends a match, and when a correction reopens it. */
  readonly setMatchOver: (args: {
    readonly academyId: string;
    readonly matchId: string;
    readonly over: boolean;
  }) => Promise<void>;

  readonly addPlayer: (player: NewPlayer) => Promise<{ readonly playerId: string }>;
  readonly changePlayer: (player: NewPlayer & { readonly playerId: string }) => Promise<boolean>;
  /** By name; `ownOnly` leaves out players of other academies. */
  readonly listPlayers: (args: {
    readonly academyId: string;
    readonly ownOnly?: boolean;
  }) => Promise<readonly Player[]>;
  readonly player: (args: {
    readonly academyId: string;
    readonly playerId: string;
  }) => Promise<Player | undefined>;
  /** A player's tallies, latest match first, at most `limit` (default 500). */
  readonly playerHistory: (args: {
    readonly academyId: string;
    readonly playerId: string;
    readonly limit?: number;
  }) => Promise<readonly HistoryRow[]>;
  /** Tallies of all own players since a date (default: all), latest first. */
  readonly academyTallies: (args: {
    readonly academyId: string;
    readonly since?: string;
  }) => Promise<readonly TallyRow[]>;
  /** Replaces the tally of this player in this match. */
  readonly writeTally: (args: {
    readonly academyId: string;
    readonly matchId: string;
    readonly playerId: string;
    readonly version: string;
    readonly tally: unknown;
  }) => Promise<Result<void, Refused<"unknown_match" | "unknown_player">>>;

  /** Writes whole matches in few statements, all or none; the academy must hold their players. */
  readonly importMatches: (args: {
    readonly academyId: string;
    readonly matches: readonly ImportMatch[];
  }) => Promise<void>;

  /** Appends to the audit; never read by the application. */
  readonly writeAudit: (args: {
    readonly academyId: string;
    readonly actor: string;
    readonly action: string;
    readonly subject?: string;
    readonly detail?: Readonly<Record<string, string | number | boolean | null>>;
  }) => Promise<void>;
}
