import type { ChartingLevel } from "@courtloom/match-log";
import type { CourtsideRefusalCode } from "../courtside.ts";

/**
 * Codes for handing the lead over, asked for by the phone that leads.
 *
 *   POST   /api/courtside/hand-over  body `HandOverAsk`  → 200 `HandOverCode` | 4xx `HandOverRefused`
 *   DELETE /api/courtside/hand-over  body `HandOverLane` → 204, also when there was none | 4xx `HandOverRefused`
 */
export const HAND_OVER_PATH = "/api/courtside/hand-over";

export interface HandOverLane {
  readonly matchId: string;
  readonly laneId: string;
}

export interface HandOverAsk extends HandOverLane {
  /** At which level this phone charts: the other one goes on with it. */
  readonly level: ChartingLevel;
}

export interface HandOverCode {
  /** Six characters. */
  readonly code: string;
  /** How long it can be entered, in ms. */
  readonly endsInMs: number;
}

/** `not_lead`: this phone does not lead the match. `no_court`: the match has no court. `day_over`: its day has ended. */
export type HandOverRefusalCode = CourtsideRefusalCode | "not_lead" | "no_court" | "day_over";

export interface HandOverRefused {
  readonly ok: false;
  readonly code: HandOverRefusalCode;
}
