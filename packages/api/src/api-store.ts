import type { ByPlayer, Result, Side } from "@courtloom/core";
import type { ChartingLevel, CoachingMode, Entry, LoggedEntry } from "@courtloom/match-log";
import type { MatchFormat, Surface } from "@courtloom/tennis";
import type { FigureStore } from "./figures/figure-store.ts";
import type { PlanStore } from "./plan/plan-store.ts";
import type { WatchStore } from "./watch/watch-store.ts";

export const HANDS = ["right", "left", "unknown"] as const;
export type Hand = (typeof HANDS)[number];

export interface PlayerFile {
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

export interface DayRow {
  readonly dayId: string;
  readonly name: string;
  /** As `2026-05-30`. */
  readonly date: string;
}

export interface CourtRow {
  readonly courtId: string;
  readonly no: number;
  readonly name: string;
}

export const MATCH_STAGES = ["waiting", "open", "over", "sealed"] as const;
export type MatchStage = (typeof MATCH_STAGES)[number];

export interface MatchRow {
  readonly matchId: string;
  readonly dayId: string | null;
  readonly courtId: string | null;
  /** Order of play on its court, from 1. */
  readonly orderNo: number;
  readonly title: string;
  readonly playedOn: string;
  readonly players: ByPlayer<PlayerFile>;
  readonly partners: ByPlayer<PlayerFile | null>;
  readonly format: MatchFormat;
  readonly firstServer: Side | null;
  readonly doubles: boolean;
  readonly coachingMode: CoachingMode;
  readonly subjects: readonly Side[];
  readonly stage: MatchStage;
}

export interface AcademyRow {
  readonly academyId: string;
  readonly name: string;
  readonly timeZone: string;
  readonly language: string;
  readonly isDemo: boolean;
}

interface InAcademy {
  readonly academyId: string;
}

/**
 * What the procedures read and write. Each call but the set-up's names the academy of the principal; rows
 * of another do not exist for it. A database that is away makes any call throw.
 */
export interface ApiStore extends PlanStore, WatchStore, FigureStore {
  /** Whether any academy, a demonstration aside, has been set up. */
  readonly hasAcademy: () => Promise<boolean>;
  readonly demoAcademyId: () => Promise<string | undefined>;
  readonly setupAcademy: (academy: {
    readonly name: string;
    readonly timeZone: string;
    readonly language: string;
    readonly isDemo: boolean;
    readonly director: { readonly displayName: string; readonly userId: string | null };
  }) => Promise<
    Result<{ readonly academyId: string; readonly memberId: string }, { readonly code: "already_set_up" }>
  >;
  readonly academy: (args: InAcademy) => Promise<AcademyRow | undefined>;
  /** Latest date first. */
  readonly listDays: (args: InAcademy) => Promise<readonly DayRow[]>;
  readonly createDay: (
    day: InAcademy & {
      readonly name: string;
      readonly date: string;
      readonly surface?: Surface;
      readonly courts: readonly { readonly name: string }[];
    },
  ) => Promise<{ readonly dayId: string; readonly courtIds: readonly string[] }>;
  readonly dayBoard: (args: InAcademy & { readonly dayId: string }) => Promise<
    | {
        readonly day: DayRow;
        readonly academyName: string;
        readonly timeZone: string;
        readonly courts: readonly CourtRow[];
      }
    | undefined
  >;
  /** By court and order of play; matches without a court last. */
  readonly dayMatches: (args: InAcademy & { readonly dayId: string }) => Promise<readonly MatchRow[]>;
  readonly addMatch: (
    match: InAcademy & {
      readonly dayId: string | null;
      readonly courtId: string | null;
      readonly title?: string;
      readonly playerIds: ByPlayer<string>;
      readonly partnerIds?: ByPlayer<string>;
      readonly format: MatchFormat;
      readonly firstServer?: Side;
      readonly coachingMode?: CoachingMode;
      readonly subjects?: readonly Side[];
      readonly surface?: Surface;
    },
  ) => Promise<
    Result<
      { readonly matchId: string },
      { readonly code: "unknown_day" | "unknown_court" | "unknown_player" }
    >
  >;
  readonly changeMatch: (
    args: InAcademy & {
      readonly matchId: string;
      readonly change: { readonly coachingMode?: CoachingMode };
    },
  ) => Promise<Result<unknown, { readonly code: "unknown_match" | "unknown_court" | "already_opened" }>>;
  readonly matchCard: (args: InAcademy & { readonly matchId: string }) => Promise<MatchRow | undefined>;
  readonly addPlayer: (
    player: InAcademy & Omit<PlayerFile, "playerId">,
  ) => Promise<{ readonly playerId: string }>;
  readonly listPlayers: (args: InAcademy & { readonly ownOnly?: boolean }) => Promise<readonly PlayerFile[]>;
  /** What was counted of each of the academy's own players in each match that is over; `readTally` reads it. */
  readonly academyTallies: (
    args: InAcademy,
  ) => Promise<readonly { readonly matchId: string; readonly playerId: string; readonly tally: unknown }[]>;
  readonly writeAudit: (
    line: InAcademy & { readonly actor: string; readonly action: string; readonly subject?: string },
  ) => Promise<void>;
}

/** An entry of a lane, or one that cannot be read and is kept aside as it came. */
export type LaneItem =
  | { readonly n: number; readonly entry: Entry }
  | { readonly n: number; readonly rejected: { readonly code: "bad_shape"; readonly raw: unknown } };

/** Why items of a lane were not appended. `gap`: n = `expect` has to come first. `identity_conflict`: another entry has this n, or this id is taken. */
export type AppendTrouble =
  | { readonly code: "unknown_match" | "unknown_lane" | "unavailable" }
  | { readonly code: "gap"; readonly expect: number }
  | { readonly code: "identity_conflict"; readonly n: number };

/** Reads a match's log and appends to lanes of it as a phone does; answers "unavailable" instead of throwing. */
export interface ApiLog {
  /** Opens a lane that is not there yet beside the score; one that is there resumes. */
  readonly openLane: (
    lane: InAcademy & {
      readonly matchId: string;
      readonly laneId: string;
      readonly chartist: string;
      readonly owner: { readonly kind: "member" | "courtside"; readonly id: string };
      readonly level: ChartingLevel;
      readonly second: true;
    },
  ) => Promise<
    Result<
      unknown,
      {
        readonly code: "unknown_match" | "not_open" | "sealed" | "other_owner" | "lead_taken" | "unavailable";
      }
    >
  >;
  /** Appends a run of a lane's items, whole or not at all; what is there already is passed over. */
  readonly append: (
    batch: InAcademy & {
      readonly matchId: string;
      readonly laneId: string;
      readonly items: readonly LaneItem[];
    },
  ) => Promise<Result<{ readonly logged: readonly LoggedEntry[] }, AppendTrouble>>;
  /** Who charts, or charted, in which lane; in the order in which the lanes were opened. */
  readonly lanes: (
    args: InAcademy & { readonly matchId: string },
  ) => Promise<
    Result<
      readonly { readonly laneId: string; readonly chartist: string }[],
      { readonly code: "unknown_match" | "unavailable" }
    >
  >;
  readonly read: (
    args: InAcademy & { readonly matchId: string; readonly after: number; readonly limit: number },
  ) => Promise<
    Result<
      { readonly entries: readonly LoggedEntry[]; readonly head: number },
      { readonly code: "unknown_match" | "unavailable" }
    >
  >;
}
