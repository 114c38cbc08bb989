import type { Side } from "@courtloom/core";

/** A finished set: games A, games B, and the loser's tie-break points or `MTB` for a match tie-break, whose two numbers are points. */
export type FinishedSet = readonly [number, number] | readonly [number, number, number | "MTB"];

export type ServiceSide = "deuce" | "ad" | "receiver-chooses";

/** The pause that starts now: between points, at a change of ends with or without rest, between sets, at the end. */
export type Pause = "point" | "rest" | "noRest" | "set" | "over";

export type MatchStatus =
  | "playing"
  | "completed"
  | "retired"
  | "defaulted"
  | "walkover"
  | "unplayed"
  | "timeUp";

/** Everything that can be said of the score after an event; plain data. Arrays are [A, B]. */
export interface ScoreState {
  readonly sets: readonly FinishedSet[];
  readonly setsWon: readonly [number, number];
  readonly games: readonly [number, number];
  readonly points: readonly [number, number];
  /** Server's score first ("30-15", "deuce", "ad-in", "ad-out", "deciding", "match"). */
  readonly call: string;
  readonly server: Side | null;
  readonly side: ServiceSide | null;
  readonly tieBreak: boolean;
  readonly matchTieBreak: boolean;
  /** Ends must be changed before the next point. */
  readonly endsDue: boolean;
  /** Changes of ends so far, this one included. */
  readonly changesOfEnds: number;
  readonly pause: Pause | null;
  readonly over: boolean;
  readonly winner: Side | null;
  readonly status: MatchStatus;
  /** In doubles only: who of the pair serves. */
  readonly serverPlayer?: string;
}
