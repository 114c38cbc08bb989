import type { MatchFormat } from "./format.ts";
import { isGameDeciding } from "./game.ts";
import { indexOf, otherIndex, sum } from "./pair.ts";
import type { ScoreState } from "./score-state.ts";
import { rulesOfSet } from "./set-rules.ts";
import { isTiebreak, STARTING_SCORE, type Standing, turnNow } from "./standing.ts";
import { isTiebreakDeciding } from "./tiebreak.ts";

/** What of a score the chances depend on; any `ScoreState` will do. */
export type ScorePlace = Pick<
  ScoreState,
  "setsWon" | "games" | "points" | "server" | "side" | "over" | "winner"
>;

/**
 * A standing that plays on like the score, as if A had served the first game of the match: games played are
 * 0 when A opened the game in play, else 1. Without the record of sets. `undefined` after the end.
 */
export function standingAt(format: MatchFormat, score: ScorePlace): Standing | undefined {
  if (score.over || score.server === null) return undefined;
  const { setsWon, games, points } = score;
  const rules = rulesOfSet(format, setsWon);
  const standing: Standing = { ...STARTING_SCORE, setsWon, games, points, rules, pairs: null };
  const server = indexOf(score.server);
  return { ...standing, gamesPlayed: turnNow(standing) % 2 === 0 ? server : otherIndex(server) };
}

/**
 * What the next point decides because the bell has gone; `undefined` in ordinary play. After the bell every
 * point is a deciding one; the one for the match is played without points, the one for a game from level ones.
 */
export function decidedByBell(
  format: MatchFormat,
  standing: Standing,
  score: ScorePlace,
): "game" | "match" | undefined {
  if (score.side !== "receiver-chooses") return undefined;
  const decides = isTiebreak(standing)
    ? isTiebreakDeciding(standing.rules.tiebreak, standing.points)
    : isGameDeciding(format.noAd, standing.points);
  if (decides) return undefined;
  return sum(standing.points) === 0 ? "match" : "game";
}
