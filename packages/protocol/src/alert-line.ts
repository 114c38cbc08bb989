import type { Side } from "@courtloom/core";
import type { Rate } from "@courtloom/match-log";

/** One alert for ever: a watch of a player in a match, and which of its alerts, counted 1, 2, 3 … with those withdrawn. */
export interface AlertKey {
  readonly matchId: string;
  readonly playerId: string;
  readonly rate: Rate;
  /** Of the rule of watching. */
  readonly version: number;
  readonly episode: number;
}

export const ALERT_STATES = ["standing", "easing", "closed", "withdrawn"] as const;
/** `closed`: over at a change of ends after easing; `withdrawn`: a correction took the evidence away. */
export type AlertState = (typeof ALERT_STATES)[number];

/** x of n, how many of the x were known to be off plan, and the 95 % interval of the share. */
export interface AlertCount {
  readonly x: number;
  readonly n: number;
  readonly offPlan: number;
  readonly low: number;
  readonly high: number;
}

/** The run that the evidence stands on: x of n since a moment, seen from the player's side. */
export interface AlertRun {
  readonly x: number;
  readonly n: number;
  /** Set number, from 1. */
  readonly set: number;
  /** The player's own games first. */
  readonly games: readonly [number, number];
}

/** Why an alert is no more, when a correction took it away. */
export interface AlertWithdrawal {
  readonly atMs: number;
  /** Who corrected; absent where that is not known. */
  readonly chartist?: string;
  /** Entry id of the correction; absent where the log does not say which one it was. */
  readonly entryId?: string;
}

export interface MarkedBy {
  readonly memberId: string;
  readonly name: string;
  readonly atMs: number;
}

export const SNOOZE_ENDS = ["set", "match"] as const;
export type SnoozeEnd = (typeof SNOOZE_ENDS)[number];

/** What people did about an alert; none of it changes what the alert says. */
export interface AlertMarks {
  /** In the order in which they saw it, each once. */
  readonly seen: readonly MarkedBy[];
  /** To whom, and who said so. */
  readonly assigned?: { readonly memberId: string; readonly name: string; readonly by: MarkedBy };
  /** While it holds; it ends with the alert, and with the set or the match. */
  readonly snoozed?: MarkedBy & { readonly reason: string; readonly until: SnoozeEnd };
  /** Who found it useful or not, each with their last word. */
  readonly useful: readonly (MarkedBy & { readonly useful: boolean })[];
}

/** One alert as staff see it. Figures are as the log stands now; of a withdrawn one as it last said. */
export interface AlertLine {
  readonly key: AlertKey;
  readonly courtId: string | null;
  readonly courtNo: number | null;
  readonly side: Side;
  readonly name: string;
  readonly state: AlertState;
  readonly match: AlertCount;
  /** Absent while there is no run. */
  readonly since?: AlertRun;
  /** The player's usual rate as the match froze it, in (0, 1), and whose past that is. */
  readonly usual: number;
  readonly source: "own" | "academy";
  /** Evidence against its threshold, in [0, 1]: ranks alerts. */
  readonly strength: number;
  /** By the server's clock. */
  readonly raisedMs: number;
  /** Both players are the academy's own: the director alone is told, and speaks to neither. */
  readonly bothOwn: boolean;
  readonly withdrawn?: AlertWithdrawal;
  readonly marks: AlertMarks;
}
