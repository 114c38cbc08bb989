import type { ByPlayer, Side } from "@courtloom/core";
import type { MatchFormat } from "@courtloom/tennis";
import type { FrozenPlan } from "./plan.ts";
import type { FrozenWatch } from "./watch.ts";

export const COACHING_MODES = ["practice", "permitted", "notPermitted", "notKnown"] as const;
export type CoachingMode = (typeof COACHING_MODES)[number];

/**
 * A player's expected level of one rate, frozen when the match opens: the mean of the match-level
 * predictive, its central 90 % range, and the Beta it comes from. `source` says whose past it is.
 */
export interface UsualRate {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly a: number;
  readonly b: number;
  readonly source: "own" | "academy";
}

/** Rates that a usual rate may be frozen for; each is a figure of its name. */
export const RATES = ["lineMissed", "lineShare", "keptMissed", "lineOffPlan", "passedUp"] as const;
export type Rate = (typeof RATES)[number];

/** What may be asked of the ball that a shot answered, or of the shot. Members of `Shot`. */
export const ASKS = ["ballHeight", "ballTime", "opponent", "cameIn", "hesitated"] as const;
export type Ask = (typeof ASKS)[number];

/** What the pad asks of a subject's line balls and of balls struck inside the service line; the plan's needs, not its words. */
export type ShotAsks = Readonly<Record<"line" | "short", readonly Ask[]>>;

export interface OpenedPlayer {
  /** Random id; names live outside the log, so that erasure needs no change in it. */
  readonly playerId: string;
  readonly hand: "right" | "left" | "unknown";
  /** A player of this academy; only own players have figures. */
  readonly own: boolean;
  /**
   * The academy's own level number of the player on the match's date, as the desk had it; absent when it had none,
   * and to readers who must not see it.
   */
  readonly level?: number;
}

/** The first entry of a log: freezes everything that the fold needs. SPEC rule L2. */
export interface MatchOpened {
  readonly kind: "MatchOpened";
  readonly matchId: string;
  readonly format: MatchFormat;
  readonly firstServer: Side;
  readonly players: ByPlayer<OpenedPlayer>;
  /** Sides whose choices are charted. */
  readonly subjects: readonly Side[];
  readonly doubles: boolean;
  /** Order of serving for doubles, four names of the log's own ("A1","B1","A2","B2"). */
  readonly doublesOrder?: readonly [string, string, string, string];
  readonly coachingMode: CoachingMode;
  /** Absent to readers who must not see it (a helper's phone). */
  readonly usualRates?: ByPlayer<Partial<Record<Rate, UsualRate>>>;
  /** Versions of what a later fold depends on; `null` where none exists yet. */
  readonly planVersion: string | null;
  readonly fitVersion: string | null;
  readonly watches: readonly FrozenWatch[];
  /** Absent in logs of before there were plans, and to readers who must not see it; null for a side without one. */
  readonly plans?: ByPlayer<FrozenPlan | null>;
  /** Absent in logs of before there were questions: nothing is asked. */
  readonly asks?: ShotAsks;
}
