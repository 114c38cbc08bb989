import type { ByPlayer, Side } from "@courtloom/core";
import type { ChartingLevel } from "@courtloom/match-log";
import type { TileState } from "@courtloom/protocol";

/**
 * What the pad asks the web server before it opens a lane, as plain JSON over `fetch` (no tRPC on the
 * pad). All names here are for the screen alone; they live outside the match log.
 *
 *   GET  /api/courtside            → 200 `Courtside` | 401 `CourtsideRefused` ("signed_out" when nobody is known)
 *   GET  /api/courtside?match=ID   → the same for a signed-in member of staff, who names the match
 *   POST /api/courtside  (a court's code, or one for handing a match over) body `CourtsideEnter` → 200 `Courtside` (and the session cookie) | 4xx `CourtsideRefused`
 *
 * A failure always has a `CourtsideRefused` body; 429 carries `afterMs`.
 */
export const COURTSIDE_PATH = "/api/courtside";

/** Body of the POST. `code` as typed (the server ignores case, spaces and hyphens), `name` 1 to 40 characters. */
export interface CourtsideEnter {
  readonly code: string;
  readonly name: string;
}

/** One match that this person may chart. */
export interface CourtsideMatch {
  readonly matchId: string;
  /** Display names. */
  readonly names: ByPlayer<string>;
  /** Which sides are players of the academy. */
  readonly own: ByPlayer<boolean>;
  /** Sides whose choices are charted. */
  readonly subjects: readonly Side[];
  /** As on the board; `playing` and `suspended` open by themselves when there is only one. */
  readonly state: TileState;
  /** Who charts it now, when that is somebody else. */
  readonly charting?: string;
  /** When play is due, as the order of play says it, ready to show; absent when nothing is said. */
  readonly due?: string;
}

/** A match of the same day on another court, for staff who take a second court. */
export interface Elsewhere {
  readonly matchId: string;
  readonly courtName: string;
  readonly names: ByPlayer<string>;
  readonly state: Exclude<TileState, "empty" | "over">;
  readonly charting?: string;
}

/** The court, who charts, and the matches on it in order of play. */
export interface Courtside {
  readonly courtName: string;
  /** Name of the person charting, as everybody will see it. */
  readonly chartist: string;
  /** True for a signed-in member of staff, false for a helper with a code. */
  readonly staff: boolean;
  readonly matches: readonly CourtsideMatch[];
  /** The lead of one of the matches was handed over by the code that was entered. In the answer to that alone. */
  readonly handedOver?: {
    readonly matchId: string;
    readonly by: string;
    readonly level: ChartingLevel;
  };
  /** For staff only: what is being played or waiting on the day’s other courts, in order of the courts. */
  readonly elsewhere?: readonly Elsewhere[];
}

export const COURTSIDE_REFUSALS = [
  /** Nobody is known: enter a code, or sign in. */
  "signed_out",
  /** The code is not one of today's. */
  "code_unknown",
  /** The code was right once; it ended, or was withdrawn. */
  "code_expired",
  /** The name is missing or too long. */
  "name_missing",
  /** A hand-over code that somebody entered before. */
  "code_used",
  /** A hand-over code whose time is over, that was withdrawn, or whose maker leads no more. */
  "code_lapsed",
  /** Too many wrong codes from here; wait `afterMs`. */
  "too_many",
  /** Signed in, but this match is not theirs to chart. */
  "forbidden",
  "unknown_match",
  "bad_shape",
  "unavailable",
] as const;
export type CourtsideRefusalCode = (typeof COURTSIDE_REFUSALS)[number];

export interface CourtsideRefused {
  readonly ok: false;
  readonly code: CourtsideRefusalCode;
  readonly afterMs?: number;
}
