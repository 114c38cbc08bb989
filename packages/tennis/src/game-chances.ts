import type { MatchFormat } from "./format.ts";
import { winsGame } from "./game.ts";
import { aheadIn, type Pair, plusOne, type SideIndex } from "./pair.ts";

/** The chance that side A wins a point which the side at `server` serves, strictly between 0 and 1. */
export type PointChance = (server: SideIndex) => number;

/** Chances that side A wins one game or one tie-break, in [0, 1]. `opener` serves its first point. */
export interface GameChances {
  /** From `points`, the next point not yet played. */
  readonly at: (points: Pair, opener: SideIndex) => number;
  /** Once the side at `winner` has won the next point. */
  readonly after: (points: Pair, opener: SideIndex, winner: SideIndex) => number;
}

/** More than any score can say, so that two numbers make one key. */
const WIDE = 2048;

export const keyOfPair = (pair: Pair, server: SideIndex): number => (pair[0] * WIDE + pair[1]) * 2 + server;

/**
 * Games of which the server serves every point, by recursion over the points: P(at) = p·P(after A's
 * point) + (1 − p)·P(after B's). Advantage from deuce is a closed form, since deuces have no end.
 * What is worked out is kept. SPEC W1, W2.
 */
export function createGameChances(noAd: MatchFormat["noAd"], pointChance: PointChance): GameChances {
  const known = new Map<number, number>();

  function at(points: Pair, server: SideIndex): number {
    const chance = pointChance(server);
    if (noAd === false && Math.min(points[0], points[1]) >= 3) return fromDeuce(chance, points);
    const key = keyOfPair(points, server);
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const value = chance * after(points, server, 0) + (1 - chance) * after(points, server, 1);
    known.set(key, value);
    return value;
  }

  function after(points: Pair, server: SideIndex, winner: SideIndex): number {
    if (winsGame(noAd, points, winner)) return 1 - winner;
    return at(plusOne(points, winner), server);
  }

  return { at, after };
}

/** D = p² / (p² + q²) at deuce; p + q·D and p·D one point either side of it. */
function fromDeuce(p: number, points: Pair): number {
  const q = 1 - p;
  const deuce = (p * p) / (p * p + q * q);
  const ahead = aheadIn(points);
  if (ahead === null) return deuce;
  return ahead === 0 ? p + q * deuce : p * deuce;
}
