import { type GameChances, keyOfPair, type PointChance } from "./game-chances.ts";
import { aheadIn, otherIndex, type Pair, plusOne, type SideIndex } from "./pair.ts";
import type { TiebreakRules } from "./set-rules.ts";
import { isTiebreakWon, turnOfService } from "./tiebreak.ts";

/** Two points from a level score: both to A, both to B, or level again. They add up to 1. */
interface Round {
  readonly toA: number;
  readonly toB: number;
  readonly again: number;
}

/**
 * Tie-breaks of any length, lead and order of service, by recursion over the points. Level at one short
 * of the length or beyond, under a lead of two, is a closed form. What is worked out is kept. SPEC W1, W3.
 */
export function createTiebreakChances(rules: TiebreakRules, pointChance: PointChance): GameChances {
  const known = new Map<number, number>();

  const chanceNow = (points: Pair, opener: SideIndex): number =>
    pointChance(turnOfService(rules, points) % 2 === 0 ? opener : otherIndex(opener));

  function at(points: Pair, opener: SideIndex): number {
    if (isTiebreakWon(rules, points)) return aheadIn(points) === 0 ? 1 : 0;
    if (isEndless(rules, points)) return fromLevel(points, opener);
    const key = keyOfPair(points, opener);
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const chance = chanceNow(points, opener);
    const value = chance * after(points, opener, 0) + (1 - chance) * after(points, opener, 1);
    known.set(key, value);
    return value;
  }

  const after = (points: Pair, opener: SideIndex, winner: SideIndex): number =>
    at(plusOne(points, winner), opener);

  function roundAt(points: Pair, opener: SideIndex): Round {
    const first = chanceNow(points, opener);
    const second = chanceNow([points[0] + 1, points[1]], opener);
    const again = first * (1 - second) + (1 - first) * second;
    return { toA: first * second, toB: (1 - first) * (1 - second), again };
  }

  /**
   * Who serves comes round again after four points, that is after two rounds of two:
   * L = (a₁ + e₁·a₂) / (1 − e₁·e₂), a = both to A, e = level again. Serving one point each in both
   * rounds it is the usual pA·(1 − pB) / [pA·(1 − pB) + (1 − pA)·pB].
   */
  function fromLevel(points: Pair, opener: SideIndex): number {
    const first = roundAt(points, opener);
    const second = roundAt([points[0] + 1, points[1] + 1], opener);
    const toA = first.toA + first.again * second.toA;
    const toB = first.toB + first.again * second.toB;
    return toA / (toA + toB);
  }

  return { at, after };
}

const isEndless = (rules: TiebreakRules, points: Pair): boolean =>
  rules.winBy === 2 && points[0] === points[1] && points[0] >= rules.to - 1;
