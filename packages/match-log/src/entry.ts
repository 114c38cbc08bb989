import type { Side } from "@courtloom/core";
import type { EndSeen, ScoreEvent, TimePolicy } from "@courtloom/tennis";
import type { MatchOpened } from "./opened.ts";
import type { ChartingLevel, Point } from "./point.ts";

/** A person charted a point. */
export interface PointCharted {
  readonly kind: "PointCharted";
  readonly point: Point;
}

/** A point was played again; nothing of it counts. */
export interface PointReplayed {
  readonly kind: "PointReplayed";
}

/** Score counts it as played; no figure does. `warning` changes nothing but is kept. */
export interface PenaltyGiven {
  readonly kind: "PenaltyGiven";
  readonly penalty: "warning" | "point" | "game";
  readonly against: Side;
}

/** A person stated the score; `missed` says that points were played that nobody charted. */
export interface ScoreStated {
  readonly kind: "ScoreStated";
  readonly score: Omit<Extract<ScoreEvent, { type: "setScore" }>, "type">;
  readonly missed: boolean;
}

/** The server is put right. `slip` says whose: the players' (points stand) or the chartist's. */
export interface ServerStated {
  readonly kind: "ServerStated";
  readonly to: Side;
  readonly slip: "players" | "chartist";
}

/** Ends were seen wrongly since the entry with id `since`, or from now on: side A is at `endOfA` from there. */
export interface EndsStated {
  readonly kind: "EndsStated";
  readonly endOfA: EndSeen;
  readonly since?: string;
}

export interface LevelChanged {
  readonly kind: "LevelChanged";
  readonly level: ChartingLevel;
}

export interface SubjectsChanged {
  readonly kind: "SubjectsChanged";
  readonly subjects: readonly Side[];
}

export interface PlaySuspended {
  readonly kind: "PlaySuspended";
  readonly reason: "rain" | "light" | "heat" | "medical" | "other";
}

export interface PlayResumed {
  readonly kind: "PlayResumed";
}

/** The match ended otherwise than by the score. */
export interface MatchEnded {
  readonly kind: "MatchEnded";
  readonly how:
    | { readonly type: "retired"; readonly side: Side }
    | { readonly type: "defaulted"; readonly side: Side }
    | { readonly type: "walkover"; readonly absent: Side }
    | { readonly type: "unplayed" }
    | { readonly type: "timeUp"; readonly policy: TimePolicy };
}

/**
 * Replaces what the entry `target` says; the last amendment holds. `from` names the entry of another lane whose
 * saying it is: that lane's person is then who charted it.
 */
export interface EntryAmended {
  readonly kind: "EntryAmended";
  readonly target: string;
  readonly to: Fact;
  readonly from?: string;
}

/**
 * A fact that was left out, put in before the entry `before`, as if it had been charted there; without `before`
 * after everything so far. `from` as in `EntryAmended`.
 */
export interface EntryInserted {
  readonly kind: "EntryInserted";
  readonly before?: string;
  readonly fact: Fact;
  readonly from?: string;
}

/** Takes the entry `target` out of the fold; `EntryRestored` puts it back. Undo is a void of the last fact. */
export interface EntryVoided {
  readonly kind: "EntryVoided";
  readonly target: string;
}

export interface EntryRestored {
  readonly kind: "EntryRestored";
  readonly target: string;
}

/** No more is charted; corrections by a director only. */
export interface MatchSealed {
  readonly kind: "MatchSealed";
}

/**
 * A person took over: the lane leads from here on, in its epoch. Written by the server in the moment of
 * taking over, so that what counts follows from the log alone, whenever the old lead's entries arrive.
 */
export interface LeadTaken {
  readonly kind: "LeadTaken";
  readonly laneId: string;
  readonly epoch: number;
}

/** What may be amended, voided or restored. */
export type Fact =
  | PointCharted
  | PointReplayed
  | PenaltyGiven
  | ScoreStated
  | ServerStated
  | EndsStated
  | LevelChanged
  | SubjectsChanged
  | PlaySuspended
  | PlayResumed
  | MatchEnded;

export type Correction = EntryAmended | EntryInserted | EntryVoided | EntryRestored;

export type EntryBody = MatchOpened | Fact | Correction | MatchSealed | LeadTaken;

export const ENTRY_VERSION = 1;

/**
 * One fact of a match, as its lane wrote it. `id` is a random UUID made on the device;
 * `n` counts 1, 2, 3 … within the lane; times are never used for order.
 */
export interface Entry {
  readonly v: typeof ENTRY_VERSION;
  readonly id: string;
  readonly n: number;
  /** Milliseconds since the lane began, by a clock that never goes back. */
  readonly atMs: number;
  /** The device's wall clock, milliseconds since 1970. */
  readonly wallMs: number;
  readonly body: EntryBody;
}

/** An entry in its place: `pos` is dense per match, given by the server. */
export interface LoggedEntry {
  readonly pos: number;
  readonly laneId: string;
  /** The match head's epoch when the lane was given the lead; 0 for the desk, `SECOND_EPOCH` for a second lane. */
  readonly epoch: number;
  readonly entry: Entry;
}

/** Epoch of a lane that was opened as second: its entries are kept beside the score and never make it. */
export const SECOND_EPOCH = -1;

/** The lane that the server itself writes to (opening, taking over, sealing). */
export const DESK_LANE = "desk";
