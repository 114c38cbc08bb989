/** Service points of one player: counts, `won` of `played`. */
export interface ServePoints {
  readonly won: number;
  readonly played: number;
}

/** Shares of points in [0, 1] that stand for a player before the match. */
export interface ServeBasis {
  /** The server's share of own service points won. */
  readonly serve: number;
  /** The opponent's share of points won when receiving. */
  readonly opponentReturn: number;
  /** The academy's usual share of service points won, over the matches that the two shares come from. */
  readonly usual: number;
  /** The same on this surface or at this event; default `usual`. */
  readonly here?: number;
}

/**
 * No player is taken to win fewer or more of the service points. Near 0 and 1 games would be decided
 * beforehand, level scores would go on for ever, and a few points at the start of a match would claim it.
 */
export const SERVE_CHANCE_RANGE = { low: 0.05, high: 0.95 } as const;

/** In how many service points the chance from before the match and the match itself weigh the same. */
export const IN_MATCH_STRENGTH = 40;

export const clampServeChance = (chance: number): number =>
  Math.min(SERVE_CHANCE_RANGE.high, Math.max(SERVE_CHANCE_RANGE.low, chance));

/**
 * The chance of a point on serve against this opponent: here + (serve − usual) − (return − (1 − usual)),
 * since what servers usually win, receivers usually lose. Clamped. Shares of few points should be shrunk to
 * the usual ones before. SPEC W10; source: T. Barnett and S. Clarke, Combining player statistics to predict
 * outcomes of tennis matches, 2005.
 */
export function serveChanceAgainst({ serve, opponentReturn, usual, here = usual }: ServeBasis): number {
  return clampServeChance(here + (serve - usual) - (opponentReturn - (1 - usual)));
}

/**
 * The chance after some of the match: mean of the Beta posterior, (strength · before + won) / (strength +
 * played), clamped. With nothing played it is `before`. SPEC W11.
 */
export function serveChanceNow(
  before: number,
  { won, played }: ServePoints,
  strength: number = IN_MATCH_STRENGTH,
): number {
  return clampServeChance((strength * before + won) / (strength + played));
}
