import type { MatchView } from "@courtloom/match-log";

/** The entry of the first point of the game in play; undefined between games. */
export const firstPointOfGame = ({ points, score }: MatchView): string | undefined => {
  const inGame = (sets: number, games: readonly [number, number]): boolean =>
    sets === score.sets.length && games[0] === score.games[0] && games[1] === score.games[1];
  return points.find(({ before }) => inGame(before.sets.length, before.games))?.id;
};
