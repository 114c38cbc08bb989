import type { Side } from "@courtloom/core";
import type { MatchFormat } from "./format.ts";
import { winsGame } from "./game.ts";
import { aheadIn, LOVE, type Pair, plusOne, type SideIndex, sum } from "./pair.ts";
import type { FinishedSet } from "./score-state.ts";
import { isSetWon, rulesOfSet, setsToWin } from "./set-rules.ts";
import { isTiebreak, openerOfGame, type Pairs, type Standing } from "./standing.ts";
import { isChangeAfter, isTiebreakWon } from "./tiebreak.ts";

/** What a point needs to know besides the standing. */
export interface Rulebook {
  readonly format: MatchFormat;
  readonly firstServer: Side;
}

/** One point to the side at `winner`, in a match that is being played. SPEC SC1 to SC16. */
export function winPoint(book: Rulebook, standing: Standing, winner: SideIndex): Standing {
  const points = plusOne(standing.points, winner);
  if (!isTiebreak(standing)) {
    if (winsGame(book.format.noAd, standing.points, winner)) return winGame(book, standing, winner);
    return { ...standing, begun: true, points, endsDue: false, pause: "point" };
  }
  if (isTiebreakWon(standing.rules.tiebreak, points)) return winGame(book, { ...standing, points }, winner);
  const endsDue = isChangeAfter(standing.rules.tiebreak.ends, sum(points));
  return {
    ...standing,
    begun: true,
    points,
    endsDue,
    changesOfEnds: standing.changesOfEnds + (endsDue ? 1 : 0),
    pause: endsDue ? "noRest" : "point",
  };
}

/**
 * The game in play to the side at `winner`, whatever its points: won, or by a penalty. A tie-break is
 * one game, and with it the set is won; its points stay in the record as they stand. SPEC SC17, SC19.
 */
export function winGame(book: Rulebook, standing: Standing, winner: SideIndex): Standing {
  const { rules, points } = standing;
  const counted = countServiceGame(book, standing);
  if (rules.kind === "tiebreak") return winSet(book, counted, winner, [points[0], points[1], "MTB"], 1);
  const games = plusOne(standing.games, winner);
  if (isTiebreak(standing)) {
    const loserPoints = Math.min(points[0], points[1]);
    return winSet(book, counted, winner, [games[0], games[1], loserPoints], sum(games));
  }
  // In a set of a fixed number of games the winner of the last one need not be ahead.
  if (isSetWon(rules, games)) return winSet(book, counted, aheadIn(games) ?? winner, games, sum(games));
  return changeAfterGame(book, { ...counted, games, points: LOVE });
}

function countServiceGame(book: Rulebook, standing: Standing): Standing {
  const gamesPlayed = standing.gamesPlayed + 1;
  if (standing.pairs === null) return { ...standing, begun: true, gamesPlayed };
  const opener = openerOfGame(book.firstServer, standing.swapped, standing.gamesPlayed);
  const pairs: Pairs = { ...standing.pairs, served: plusOne(standing.pairs.served, opener) };
  return { ...standing, begun: true, gamesPlayed, pairs };
}

function changeAfterGame(book: Rulebook, standing: Standing): Standing {
  const played = sum(standing.games);
  const endsDue = book.format.ends !== "setEnds" && played % 2 === 1;
  const pause = !endsDue ? "point" : played === 1 ? "noRest" : "rest";
  return { ...standing, endsDue, changesOfEnds: standing.changesOfEnds + (endsDue ? 1 : 0), pause };
}

function winSet(
  book: Rulebook,
  standing: Standing,
  winner: SideIndex,
  record: FinishedSet,
  gamesInSet: number,
): Standing {
  const setsWon: Pair = plusOne(standing.setsWon, winner);
  const sets = [...standing.sets, record];
  const next = { ...standing, sets, setsWon, games: LOVE, points: LOVE };
  if (setsWon[winner] === setsToWin(book.format))
    return { ...next, endsDue: false, pause: "over", status: "completed", winner };
  const endsDue = book.format.ends === "setEnds" || gamesInSet % 2 === 1;
  return {
    ...next,
    rules: rulesOfSet(book.format, setsWon),
    endsDue,
    changesOfEnds: standing.changesOfEnds + (endsDue ? 1 : 0),
    pause: "set",
  };
}
