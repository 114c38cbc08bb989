import type { ByPlayer, Result, Side } from "@courtloom/core";
import type { CoachingMode, Entry, MatchOpened } from "@courtloom/match-log";
import type { MatchFormat, Surface } from "@courtloom/tennis";
import type { PlanStore } from "../plan/plan-store.ts";

interface DemoPlayerRow {
  readonly academyId: string;
  readonly playerId: string;
  readonly displayName: string;
  readonly hand: "right" | "left" | "unknown";
  readonly birthYear: number | null;
  readonly squad: string | null;
  readonly own: boolean;
  readonly level: number | null;
}

interface DemoNewMatch {
  readonly dayId: string | null;
  readonly courtId: string | null;
  readonly orderNo?: number;
  readonly title?: string;
  readonly playedOn?: string;
  readonly playerIds: ByPlayer<string>;
  readonly format: MatchFormat;
  readonly firstServer?: Side;
  readonly coachingMode?: CoachingMode;
  readonly surface?: Surface;
}

/** What setting up the demonstration needs of the stores. */
export interface DemoStore extends Pick<PlanStore, "plans" | "savePlan"> {
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
  readonly addMember: (member: {
    readonly academyId: string;
    readonly memberId: string;
    readonly role: "director" | "coach";
    readonly displayName: string;
    readonly userId: string | null;
  }) => Promise<void>;
  readonly addPlayer: (player: DemoPlayerRow) => Promise<{ readonly playerId: string }>;
  readonly listPlayers: (args: {
    readonly academyId: string;
  }) => Promise<
    readonly { readonly playerId: string; readonly displayName: string; readonly own: boolean }[]
  >;
  readonly listDays: (args: {
    readonly academyId: string;
  }) => Promise<readonly { readonly dayId: string; readonly date: string }[]>;
  readonly createDay: (day: {
    readonly academyId: string;
    readonly name: string;
    readonly date: string;
    readonly courts: readonly { readonly name: string }[];
  }) => Promise<{ readonly dayId: string; readonly courtIds: readonly string[] }>;
  readonly addMatch: (
    match: DemoNewMatch & { readonly academyId: string },
  ) => Promise<Result<{ readonly matchId: string }, { readonly code: string }>>;
  readonly matchCard: (args: { readonly academyId: string; readonly matchId: string }) => Promise<unknown>;
  readonly importMatches: (args: {
    readonly academyId: string;
    readonly matches: readonly {
      readonly match: DemoNewMatch;
      readonly opened: MatchOpened;
      readonly laneId: string;
      readonly chartist: string;
      readonly entries: readonly Entry[];
      readonly sealed: boolean;
      readonly over: boolean;
      readonly openedMs: number;
      readonly tallies: readonly {
        readonly playerId: string;
        readonly version: string;
        readonly tally: unknown;
      }[];
    }[];
  }) => Promise<void>;
}

/** An account without a password, for the demonstration's director. */
export type CreateDemoAccount = (account: {
  readonly email: string;
  readonly name: string;
}) => Promise<Result<{ readonly userId: string }, string>>;
