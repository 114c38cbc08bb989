import type { ByPlayer } from "@courtloom/core";
import type { TileScore } from "@courtloom/protocol";
import { describePoints, type ScoreState } from "@courtloom/tennis";

const called = (word: string | undefined): string => (word === "ad" ? "Ad" : (word ?? ""));

const pointsOf = (state: ScoreState): ByPlayer<string> => {
  if (state.tieBreak || state.matchTieBreak)
    return { A: String(state.points[0]), B: String(state.points[1]) };
  const [a, b] = describePoints(state, "A").split("-");
  return { A: called(a), B: called(b) };
};

/** A score as a board shows it, from the score that the fold keeps. */
export const tileScoreOf = (state: ScoreState): TileScore => ({
  sets: state.sets,
  games: state.games,
  points: pointsOf(state),
  server: state.server,
  tieBreak: state.tieBreak,
  matchTieBreak: state.matchTieBreak,
  endsDue: state.endsDue,
  winner: state.winner,
  status: state.status,
});
