import { keyOfPair } from "./game-chances.ts";
import { type SideIndex, sum } from "./pair.ts";
import { openerOfGame, type Standing } from "./standing.ts";
import { type Rulebook, winGame } from "./win-point.ts";

/** In a standing made for chances the number of games played says who opens the next one: A when it is even. */
export const openerIn = (standing: Standing): SideIndex => openerOfGame("A", false, standing.gamesPlayed);

/** How a set can end: who wins it and who then opens the next one. The four chances add up to 1. */
export interface SetEndings {
  readonly toAThenA: number;
  readonly toAThenB: number;
  readonly toBThenA: number;
  readonly toBThenB: number;
}

/** A's chance in the game that starts at a standing. */
export type GameChance = (standing: Standing) => number;

/**
 * The endings of a set from a standing between its games: recursion over games and server by the scoring's
 * own `winGame`. One object is for sets of the same rules, whatever the sets before; what it works out is
 * kept, some hundred standings for a set to six. SPEC W1, W4.
 */
export function createSetEndings(book: Rulebook, gameChance: GameChance): (standing: Standing) => SetEndings {
  const known = new Map<number, SetEndings>();

  function endings(standing: Standing): SetEndings {
    const key = keyOfPair(standing.games, openerIn(standing));
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const { chance, ifA, ifB } = isEndless(standing)
      ? forkFromLevel(book, standing, gameChance)
      : { chance: gameChance(standing), ifA: winGame(book, standing, 0), ifB: winGame(book, standing, 1) };
    const value = mix(chance, followed(standing, ifA), followed(standing, ifB));
    known.set(key, value);
    return value;
  }

  const followed = (before: Standing, after: Standing): SetEndings =>
    sum(after.setsWon) > sum(before.setsWon) ? endedIn(before, after) : endings(after);

  return endings;
}

/** Where a set can go from a standing: to `ifA` with chance `chance`, else to `ifB`. */
interface Fork {
  readonly chance: number;
  readonly ifA: Standing;
  readonly ifB: Standing;
}

/** Level in a set without a tie-break, one game short of its length or beyond: it may go on for ever. */
function isEndless({ rules, games }: Standing): boolean {
  if (rules.kind === "tiebreak" || rules.tiebreakAt !== null) return false;
  const isByTwo = rules.lead === 2 && rules.fixedGames === null;
  return isByTwo && games[0] === games[1] && games[0] >= rules.toWin - 1;
}

/** Two games in a row win the set, one each brings it back with the same server: P = a / (a + b). */
function forkFromLevel(book: Rulebook, level: Standing, gameChance: GameChance): Fork {
  const aheadA = winGame(book, level, 0);
  const aheadB = winGame(book, level, 1);
  const first = gameChance(level);
  const bothToA = first * gameChance(aheadA);
  const bothToB = (1 - first) * (1 - gameChance(aheadB));
  const chance = bothToA / (bothToA + bothToB);
  return { chance, ifA: winGame(book, aheadA, 0), ifB: winGame(book, aheadB, 1) };
}

function endedIn(before: Standing, after: Standing): SetEndings {
  const isToA = after.setsWon[0] > before.setsWon[0];
  const isThenA = openerIn(after) === 0;
  return {
    toAThenA: isToA && isThenA ? 1 : 0,
    toAThenB: isToA && !isThenA ? 1 : 0,
    toBThenA: !isToA && isThenA ? 1 : 0,
    toBThenB: isToA || isThenA ? 0 : 1,
  };
}

const mix = (chance: number, one: SetEndings, other: SetEndings): SetEndings => ({
  toAThenA: chance * one.toAThenA + (1 - chance) * other.toAThenA,
  toAThenB: chance * one.toAThenB + (1 - chance) * other.toAThenB,
  toBThenA: chance * one.toBThenA + (1 - chance) * other.toBThenA,
  toBThenB: chance * one.toBThenB + (1 - chance) * other.toBThenB,
});
