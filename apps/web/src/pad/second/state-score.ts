import type { MatchView, ScoreStated } from "@courtloom/match-log";

/**
 * Where a second lane begins: the lead's score at that moment, said as one that was reached without this person.
 * Undefined while nothing was played: the lane begins with the match.
 */
export const stateScore = ({ score, points }: MatchView): ScoreStated | undefined => {
  const { sets, games, server } = score;
  const begun =
    points.length > 0 || sets.length > 0 || [...games, ...score.points].some((count) => count > 0);
  if (!begun) return undefined;
  const stated = { sets: [...sets], games, points: score.points, ...(server ? { server } : {}) };
  return { kind: "ScoreStated", score: stated, missed: true };
};
