import type { MatchFormat } from "./format.ts";
import { LOVE, type Pair, sum } from "./pair.ts";
import type { FinishedSet } from "./score-state.ts";
import { rulesOfSet, type SetRules } from "./set-rules.ts";
import { isOver, isTiebreak, type Standing } from "./standing.ts";
import { changesWithin } from "./tiebreak.ts";

export const isMatchTiebreak = (set: FinishedSet): boolean => set[2] === "MTB";

/** Games that a finished set counts for the order of service and for ends; a match tie-break is one. */
export const gamesInSet = (set: FinishedSet): number => (isMatchTiebreak(set) ? 1 : set[0] + set[1]);

/** The index of the side with the higher figure of a finished set. */
export const wonBy = (set: FinishedSet): 0 | 1 => (set[0] > set[1] ? 0 : 1);

/**
 * Changes of ends that a score implies, counted from nothing but the score: half of each set's games,
 * rounded up, and those within tie-breaks; none after the end. For scores that a person stated. SPEC SC16.
 */
export function countChanges(format: MatchFormat, standing: Standing): number {
  let setsWon: Pair = LOVE;
  let total = 0;
  for (const set of standing.sets) {
    total +=
      changesBetween(format, gamesInSet(set), true) + changesInTiebreak(rulesOfSet(format, setsWon), set);
    setsWon = wonBy(set) === 0 ? [setsWon[0] + 1, setsWon[1]] : [setsWon[0], setsWon[1] + 1];
  }
  const last = standing.sets.at(-1);
  if (isOver(standing) && last !== undefined)
    return total - (format.ends === "setEnds" || gamesInSet(last) % 2 === 1 ? 1 : 0);
  const within = isTiebreak(standing) ? changesWithin(standing.rules.tiebreak.ends, sum(standing.points)) : 0;
  return total + changesBetween(format, sum(standing.games), false) + within;
}

function changesBetween(format: MatchFormat, games: number, isFinished: boolean): number {
  if (format.ends === "setEnds") return isFinished ? 1 : 0;
  return Math.ceil(games / 2);
}

function changesInTiebreak(rules: SetRules, set: FinishedSet): number {
  const third = set[2];
  if (third === undefined) return 0;
  const { to, winBy, ends } = rules.tiebreak;
  const played = third === "MTB" ? set[0] + set[1] : third + Math.max(to, third + winBy);
  return changesWithin(ends, Math.max(0, played - 1));
}
