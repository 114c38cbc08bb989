import type { Side } from "@courtloom/core";
import type { EndSeen, Seat } from "@courtloom/tennis";
import type { Shot } from "./shot.ts";

export const CHARTING_LEVELS = ["score", "key", "every"] as const;
/** How much of a point is charted: the score only, key balls, or every ball. */
export type ChartingLevel = (typeof CHARTING_LEVELS)[number];

export const SERVE_OUTCOMES = ["firstIn", "secondIn", "ace", "doubleFault"] as const;
export type ServeOutcome = (typeof SERVE_OUTCOMES)[number];

/** The serve of a point. `faults` before the serve that counted: 0 or 1, and 2 for a double fault. */
export interface Serve {
  readonly outcome: ServeOutcome;
  readonly faults: 0 | 1 | 2;
  /** Serves that clipped the net and were played again. */
  readonly lets?: number;
}

/** One point as a person charted it. At level `score` it has a winner and nothing else. */
export interface Point {
  readonly winner: Side;
  readonly level: ChartingLevel;
  readonly seat: Seat;
  /** The end of side A during this point, as the chartist saw it. */
  readonly endOfA: EndSeen;
  readonly serve?: Serve;
  /**
   * After the serve, in order. At level `every` all of both players; at level `key` the subject's
   * groundstrokes as touches (kept) or drawings, and whoever's last shot. Empty when none was drawn.
   */
  readonly shots: readonly Shot[];
  /** Level `key`: balls that sat up for the subject and were kept, a line ball not taken. Absent is unknown. */
  readonly satUpKept?: number;
}
