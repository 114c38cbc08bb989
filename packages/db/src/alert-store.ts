import type { Result, Side } from "@courtloom/core";
import type { Rate } from "@courtloom/match-log";
import type { MatchRef, Unavailable } from "./entry-store.ts";

/** One alert for ever within its academy. */
export interface AlertKey {
  readonly matchId: string;
  readonly playerId: string;
  readonly rate: Rate;
  readonly version: number;
  readonly episode: number;
}

export const STORED_ALERT_STATES = ["standing", "easing", "closed", "withdrawn"] as const;
export type StoredAlertState = (typeof STORED_ALERT_STATES)[number];

/** What an alert said when its match was looked at last. */
export interface AlertSaid {
  readonly match: { readonly x: number; readonly n: number; readonly offPlan: number };
  readonly since?: {
    readonly x: number;
    readonly n: number;
    readonly set: number;
    readonly games: readonly [number, number];
  };
  readonly usual: number;
  readonly source: "own" | "academy";
  readonly strength: number;
  /** The set that is played, from 1. */
  readonly set: number;
  readonly isOver: boolean;
  /** Ends were changed, a set ended or the match, since it was raised. */
  readonly isDue: boolean;
  /** How many such moments there were in the match. */
  readonly breaks: number;
}

export interface StoredAlert extends AlertKey {
  readonly side: Side;
  readonly raisedEntryId: string;
  readonly raisedPos: number;
  readonly raisedMs: number;
  readonly state: StoredAlertState;
  /** Of the log that state and figures are of. */
  readonly pos: number;
  readonly said: AlertSaid;
  /** Of a withdrawn one: when, and by which correction of which lane where that is known. */
  readonly withdrawn?: { readonly atMs: number; readonly entryId?: string; readonly laneId?: string };
}

export const ALERT_MARK_KINDS = ["seen", "assign", "snooze", "wake", "useful"] as const;

/** What a mark says besides its kind. */
export interface AlertMarkDetails {
  /** Of `assign`: to whom; null: to nobody. */
  readonly memberId?: string | null;
  /** Of `snooze`. */
  readonly reason?: string;
  readonly until?: "set" | "match";
  /** Of `snooze`: the set that was played, from 1. */
  readonly set?: number;
  /** Of `useful`. */
  readonly useful?: boolean;
}

export interface StoredMark {
  readonly kind: (typeof ALERT_MARK_KINDS)[number];
  readonly by: string;
  readonly atMs: number;
  readonly details: AlertMarkDetails;
}

export interface MarkedAlert extends StoredAlert {
  /** In the order in which they were made. */
  readonly marks: readonly StoredMark[];
}

export interface NoticeClaim extends MatchRef {
  /** A member. */
  readonly recipient: string;
  readonly channel: "app";
  /** Alerts of the match to tell of, the most pressing first. */
  readonly alerts: readonly AlertKey[];
  readonly atBreak: number;
  readonly most: { readonly atBreak: number; readonly inMatch: number };
  readonly atMs: number;
}

type Answer<T> = Promise<Result<T, Unavailable>>;

/** What was raised, told and marked. Nothing here is ever deleted. Rules AL10 to AL16. */
export interface AlertStore {
  /** A match's alerts by player, rate, version and number; none: empty. */
  readonly alertsOf: (match: MatchRef) => Answer<readonly StoredAlert[]>;
  /**
   * Adds alerts, and brings those that are there up to date: not one that is withdrawn, and not from an older log
   * than it is of. When and by what it was raised stays as it was first said. Gives all alerts of the match.
   */
  readonly writeAlerts: (
    write: MatchRef & { readonly alerts: readonly StoredAlert[] },
  ) => Answer<readonly StoredAlert[]>;
  /** Alerts of all matches of a day. */
  readonly dayAlerts: (day: {
    readonly academyId: string;
    readonly dayId: string;
  }) => Answer<readonly MarkedAlert[]>;
  /**
   * Claims notices for one person: the first of `alerts` that are open and that the person was never told of, as
   * many as `most` leaves. Each is claimed once, however many ask at once.
   */
  readonly claimNotices: (claim: NoticeClaim) => Answer<readonly AlertKey[]>;
  /** Adds a mark at the end; false when there is no such alert. */
  readonly addMark: (mark: {
    readonly academyId: string;
    readonly key: AlertKey;
    readonly mark: StoredMark;
  }) => Answer<boolean>;
}
