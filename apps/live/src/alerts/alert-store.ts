import type { Result, Side } from "@courtloom/core";
import type { AlertKey, AlertState, SnoozeEnd } from "@courtloom/protocol";
import type { MatchRef, Unavailable } from "../store.ts";

/** What an alert said when its match was looked at last. Plain data, kept as it is. */
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
  readonly state: AlertState;
  /** Of the log that state and figures are of. */
  readonly pos: number;
  readonly said: AlertSaid;
  readonly withdrawn?: { readonly atMs: number; readonly entryId?: string; readonly laneId?: string };
}

export interface StoredMark {
  readonly kind: "seen" | "assign" | "snooze" | "wake" | "useful";
  /** Member id. */
  readonly by: string;
  readonly atMs: number;
  readonly details: {
    readonly memberId?: string | null;
    readonly reason?: string;
    readonly until?: SnoozeEnd;
    /** The set that was played when it was snoozed, from 1. */
    readonly set?: number;
    readonly useful?: boolean;
  };
}

export interface MarkedAlert extends StoredAlert {
  /** In the order in which they were made. */
  readonly marks: readonly StoredMark[];
}

export interface NoticeClaim extends MatchRef {
  readonly recipient: string;
  readonly channel: "app";
  /** The most pressing first. */
  readonly alerts: readonly AlertKey[];
  readonly atBreak: number;
  readonly most: { readonly atBreak: number; readonly inMatch: number };
  readonly atMs: number;
}

type Answer<T> = Promise<Result<T, Unavailable>>;

/** What was raised, told and marked, on disk; `main.ts` gives the database's. */
export interface AlertStore {
  readonly alertsOf: (match: MatchRef) => Answer<readonly StoredAlert[]>;
  /** Never changes a withdrawn alert, nor one that is of a newer log. Gives all alerts of the match. */
  readonly writeAlerts: (
    write: MatchRef & { readonly alerts: readonly StoredAlert[] },
  ) => Answer<readonly StoredAlert[]>;
  readonly dayAlerts: (day: {
    readonly academyId: string;
    readonly dayId: string;
  }) => Answer<readonly MarkedAlert[]>;
  /** What this call claimed; each notice is claimed once for ever. */
  readonly claimNotices: (claim: NoticeClaim) => Answer<readonly AlertKey[]>;
  /** False when there is no such alert. */
  readonly addMark: (mark: {
    readonly academyId: string;
    readonly key: AlertKey;
    readonly mark: StoredMark;
  }) => Answer<boolean>;
}

/** A member of the academy, as far as alerts name them. */
export interface StaffMember {
  readonly memberId: string;
  readonly displayName: string;
  readonly role: "director" | "coach";
}

export type MembersOf = (academy: { readonly academyId: string }) => Promise<readonly StaffMember[]>;
