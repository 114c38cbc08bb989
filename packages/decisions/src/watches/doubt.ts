import type { Side } from "@courtloom/core";
import { type MatchView, missedStretches } from "@courtloom/match-log";

/** Above this share of points that were not charted a match is doubtful. */
const MOST_UNCHARTED = 0.1;

/**
 * Whether the match was doubtful for a player after each of its points: more than a tenth of the points so far not
 * charted for the player (missed stretches count their fewest points), or an entry before it that the score could
 * not take. SPEC WA6.
 */
export const doubtAfterPoints = (view: MatchView, side: Side): readonly boolean[] => {
  const missedBefore = new Map<number, number>();
  for (const { beforePoint, atLeast } of missedStretches(view))
    missedBefore.set(beforePoint, (missedBefore.get(beforePoint) ?? 0) + atLeast);
  const conflictFrom = Math.min(...view.setAside.map(({ pos }) => pos), Number.POSITIVE_INFINITY);
  let [uncharted, all] = [0, 0];
  return view.points.map(({ point, subjects, pos }, i) => {
    const missed = missedBefore.get(i) ?? 0;
    const isCharted = point.level === "every" || (point.level === "key" && subjects.includes(side));
    uncharted += missed + (isCharted ? 0 : 1);
    all += missed + 1;
    return uncharted / all > MOST_UNCHARTED || pos > conflictFrom;
  });
};
