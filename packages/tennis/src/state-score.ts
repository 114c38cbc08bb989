import { err, ok, type Result } from "@courtloom/core";
import { countChanges, gamesInSet, isMatchTiebreak, wonBy } from "./count-changes.ts";
import type { MatchFormat } from "./format.ts";
import { isGameDeciding } from "./game.ts";
import { indexOf, LOVE, type Pair, plusOne, sum } from "./pair.ts";
import type { ScoreError } from "./score-error.ts";
import type { ScoreEvent } from "./score-event.ts";
import type { FinishedSet } from "./score-state.ts";
import { isSetWon, rulesOfSet, setsToWin } from "./set-rules.ts";
import { isTiebreak, openerOfGame, type Standing, serverNow } from "./standing.ts";
import { isTiebreakWon } from "./tiebreak.ts";
import type { Rulebook } from "./win-point.ts";

export type StatedScore = Omit<Extract<ScoreEvent, { type: "setScore" }>, "type">;

const impossible = (member: "sets" | "games" | "points", reason: string): ScoreError => ({
  code: "impossible_score",
  member,
  reason,
});

/**
 * A person states the score. Members left out stay as they are; the server follows from the order of
 * service unless stated, and the changes of ends are counted anew. Finished sets may be ones that the
 * format would not bring about (a set stopped by agreement), as long as each has a winner. SPEC SC22 to SC25.
 */
export function stateScore(
  book: Rulebook,
  standing: Standing,
  stated: StatedScore,
): Result<Standing, ScoreError> {
  const sets = stated.sets ?? standing.sets;
  const setsWon = stated.sets === undefined ? ok(standing.setsWon) : countSets(book.format, sets);
  if (!setsWon.ok) return setsWon;
  const scored = { ...standing, begun: true, sets, setsWon: setsWon.value };
  const isWon = Math.max(...setsWon.value) === setsToWin(book.format);
  const result = isWon ? closeMatch(scored, stated) : openScore(book, scored, stated);
  if (!result.ok) return result;
  return ok({ ...result.value, changesOfEnds: countChanges(book.format, result.value) });
}

const isCount = (value: unknown): boolean =>
  Number.isInteger(value) && Number(value) >= 0 && Number(value) < 1000;

function countSets(format: MatchFormat, sets: readonly FinishedSet[]): Result<Pair, ScoreError> {
  let won: Pair = LOVE;
  for (const set of sets) {
    const reason = whyNoSet(set);
    if (reason !== undefined) return err(impossible("sets", reason));
    if (Math.max(...won) === setsToWin(format))
      return err(impossible("sets", `the match was over before ${set[0]}-${set[1]}: leave that set out`));
    won = plusOne(won, wonBy(set));
  }
  return ok(won);
}

function whyNoSet(set: FinishedSet): string | undefined {
  const [a, b, third] = set;
  if (!isCount(a) || !isCount(b)) return "write whole numbers from 0";
  if (a === b) return `${a}-${b} has no winner: put an unfinished set in games`;
  if (third === undefined || isMatchTiebreak(set)) return undefined;
  if (!isCount(third)) return "the loser's tie-break points are a whole number from 0";
  return Math.abs(a - b) === 1 ? undefined : `${a}-${b} was not won by a tie-break: leave its points out`;
}

function closeMatch(standing: Standing, stated: StatedScore): Result<Standing, ScoreError> {
  const gamesPlayed = gamesIn(standing.sets, LOVE);
  for (const member of ["games", "points"] as const) {
    if (sum(stated[member] ?? LOVE) > 0)
      return err(impossible(member, "the sets already decide the match: write 0 and 0 or leave it out"));
  }
  const winner = standing.setsWon[0] > standing.setsWon[1] ? 0 : 1;
  return ok({
    ...standing,
    games: LOVE,
    points: LOVE,
    gamesPlayed,
    status: "completed",
    winner,
    endsDue: false,
    pause: "over",
    bell: null,
  });
}

function openScore(book: Rulebook, standing: Standing, stated: StatedScore): Result<Standing, ScoreError> {
  const games: Pair = stated.games ?? standing.games;
  const points: Pair = stated.points ?? standing.points;
  const rules = rulesOfSet(book.format, standing.setsWon);
  const gamesPlayed = gamesIn(standing.sets, games);
  const next: Standing = { ...standing, games, points, rules, gamesPlayed, endsDue: false, pause: "point" };
  const error = whyNoGames(next) ?? whyNoPoints(book.format, next);
  if (error !== undefined) return err(error);
  const served = withServer(book, next, stated.server);
  return ok(recountServiceGames(book, served));
}

const gamesIn = (sets: readonly FinishedSet[], games: Pair): number =>
  sets.reduce((total, set) => total + gamesInSet(set), sum(games));

function whyNoGames(standing: Standing): ScoreError | undefined {
  const [a, b] = standing.games;
  if (!isCount(a) || !isCount(b)) return impossible("games", "write whole numbers from 0");
  if (standing.rules.kind === "tiebreak" && a + b > 0)
    return impossible("games", "this set is a tie-break without games: state its points");
  if (isSetWon(standing.rules, standing.games))
    return impossible("games", `${a}-${b} is a finished set: put it in sets`);
  return undefined;
}

function whyNoPoints(format: MatchFormat, standing: Standing): ScoreError | undefined {
  const [a, b] = standing.points;
  if (!isCount(a) || !isCount(b)) return impossible("points", "write whole numbers from 0");
  const isWon = isTiebreak(standing)
    ? isTiebreakWon(standing.rules.tiebreak, standing.points)
    : isGameWon(format, standing.points);
  if (!isWon) return undefined;
  return impossible("points", `${a} and ${b} points finish the game: count it in games and write 0 and 0`);
}

function isGameWon(format: MatchFormat, points: Pair): boolean {
  const low = Math.min(points[0], points[1]);
  const lead = Math.max(points[0], points[1]) - low;
  if (lead === 0 || low + lead < 4) return false;
  return lead >= 2 || isGameDeciding(format.noAd, [low, low]);
}

/** The standing with the order of service turned so that `server` serves next; unchanged when not stated. */
export function withServer(book: Rulebook, standing: Standing, server: StatedScore["server"]): Standing {
  if (server === undefined || serverNow(standing, book.firstServer) === indexOf(server)) return standing;
  return { ...standing, swapped: !standing.swapped };
}

function recountServiceGames(book: Rulebook, standing: Standing): Standing {
  const { pairs } = standing;
  if (pairs === null) return standing;
  const games = Math.max(0, standing.gamesPlayed - pairs.fromGame);
  const opener = openerOfGame(book.firstServer, standing.swapped, pairs.fromGame);
  const half = Math.floor(games / 2);
  const served = games % 2 === 0 ? ([half, half] as const) : plusOne([half, half], opener);
  return { ...standing, pairs: { ...pairs, served } };
}
