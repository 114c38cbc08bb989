import type { MatchFormat } from "./format.ts";
import { keyOfPair } from "./game-chances.ts";
import { type Pair, plusOne, type SideIndex } from "./pair.ts";
import { createSetEndings, type GameChance } from "./set-chances.ts";
import { rulesOfSet, type SetRules, setsToWin } from "./set-rules.ts";
import { STARTING_SCORE, type Standing } from "./standing.ts";

/**
 * The chance that side A wins the match from a standing between games, where `gameChance` gives A's chance
 * in the game that starts there: over the ways in which the set in play can end, then set by set. Sets of
 * the same rules share their endings; what is worked out is kept. SPEC W1, W4.
 */
export function createMatchChances(
  format: MatchFormat,
  gameChance: GameChance,
): (standing: Standing) => number {
  const toWin = setsToWin(format);
  const endingsOf = createEndingsByRules(format, gameChance);
  const starts = new Map<number, number>();

  function chanceOfA(standing: Standing): number {
    if (standing.winner !== null) return 1 - standing.winner;
    const { setsWon } = standing;
    const ends = endingsOf(standing.rules)(standing);
    const [ifA, ifB] = [plusOne(setsWon, 0), plusOne(setsWon, 1)];
    const toA = ends.toAThenA * fromSetStart(ifA, 0) + ends.toAThenB * fromSetStart(ifA, 1);
    return toA + ends.toBThenA * fromSetStart(ifB, 0) + ends.toBThenB * fromSetStart(ifB, 1);
  }

  function fromSetStart(setsWon: Pair, opener: SideIndex): number {
    if (setsWon[0] === toWin) return 1;
    if (setsWon[1] === toWin) return 0;
    const key = keyOfPair(setsWon, opener);
    const kept = starts.get(key);
    if (kept !== undefined) return kept;
    const rules = rulesOfSet(format, setsWon);
    const value = chanceOfA({ ...STARTING_SCORE, setsWon, rules, pairs: null, gamesPlayed: opener });
    starts.set(key, value);
    return value;
  }

  return chanceOfA;
}

/** A match has sets of at most two kinds, the final set and the others. */
function createEndingsByRules(format: MatchFormat, gameChance: GameChance) {
  const byRules = new Map<string, ReturnType<typeof createSetEndings>>();
  return (rules: SetRules) => {
    const key = JSON.stringify(rules);
    const kept = byRules.get(key) ?? createSetEndings({ format, firstServer: "A" }, gameChance);
    byRules.set(key, kept);
    return kept;
  };
}
