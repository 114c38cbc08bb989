import type { Side } from "@courtloom/core";
import { LOVE, otherIndex, type Pair, type SideIndex, sum } from "./pair.ts";
import type { TimePolicy } from "./score-event.ts";
import type { FinishedSet, MatchStatus, Pause } from "./score-state.ts";
import { isTiebreakDue, type SetRules } from "./set-rules.ts";
import { turnOfService } from "./tiebreak.ts";

/** The bell has gone and one point is still to be played: for the game, or for the match. */
export interface Bell {
  readonly policy: TimePolicy;
  readonly decides: "game" | "match";
}

/** The pairs of a doubles match, each in its own order of service, and the game that the order begins with. */
export interface Pairs {
  readonly players: readonly [readonly string[], readonly string[]];
  readonly fromGame: number;
  /** Service games finished by each pair since then. */
  readonly served: Pair;
}

/** What has to be remembered between points; everything else is worked out from it. */
export interface Standing {
  readonly sets: readonly FinishedSet[];
  readonly setsWon: Pair;
  readonly games: Pair;
  readonly points: Pair;
  /** Rules of the set in play. */
  readonly rules: SetRules;
  /** Finished games of the match; a tie-break is one. */
  readonly gamesPlayed: number;
  /** The order of service runs contrary to the toss, after a correction. */
  readonly swapped: boolean;
  readonly pairs: Pairs | null;
  /** A point was played or a score stated. */
  readonly begun: boolean;
  readonly endsDue: boolean;
  readonly changesOfEnds: number;
  readonly pause: Pause | null;
  readonly winner: SideIndex | null;
  readonly status: MatchStatus;
  readonly bell: Bell | null;
}

export const isOver = (standing: Standing): boolean => standing.status !== "playing";

export const isTiebreak = (standing: Standing): boolean => isTiebreakDue(standing.rules, standing.games);

/** Who opens the game numbered `game` (from 0) of the match. SPEC SC13. */
export const openerOfGame = (firstServer: Side, swapped: boolean, game: number): SideIndex =>
  (game % 2 === 0) === ((firstServer === "A") !== swapped) ? 0 : 1;

/** Who serves the next point. */
export function serverNow(standing: Standing, firstServer: Side): SideIndex {
  const opener = openerOfGame(firstServer, standing.swapped, standing.gamesPlayed);
  if (!isTiebreak(standing)) return opener;
  return turnNow(standing) % 2 === 0 ? opener : otherIndex(opener);
}

/** Turns of service finished in the game in play: 0 except in a tie-break. */
export const turnNow = (standing: Standing): number =>
  isTiebreak(standing) ? turnOfService(standing.rules.tiebreak, standing.points) : 0;

/** Nothing of the set in play has been played. */
export const isAtSetStart = (standing: Standing): boolean =>
  sum(standing.games) === 0 && sum(standing.points) === 0;

/** The ending that every early end of a match shares: the score stays as it stood. SPEC SC27. */
export const endMatch = (standing: Standing, status: MatchStatus, winner: SideIndex | null): Standing => ({
  ...standing,
  status,
  winner,
  endsDue: false,
  pause: "over",
  bell: null,
});

/** A correction: no change of ends and no rest follow from it. */
export const afterCorrection = (standing: Standing): Standing => ({
  ...standing,
  endsDue: false,
  pause: "point",
});

export const STARTING_SCORE = {
  sets: [],
  setsWon: LOVE,
  games: LOVE,
  points: LOVE,
  gamesPlayed: 0,
  swapped: false,
  begun: false,
  endsDue: false,
  changesOfEnds: 0,
  pause: null,
  winner: null,
  status: "playing",
  bell: null,
} as const satisfies Omit<Standing, "rules" | "pairs">;
