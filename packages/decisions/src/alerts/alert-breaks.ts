import type { MatchView } from "@courtloom/match-log";
import type { ScoreState } from "@courtloom/tennis";

/** Moments so far in which players sit down or walk round: changes of ends, ends of sets, the end of the match. */
const breaksAt = ({ changesOfEnds, sets, over }: ScoreState, isSealed: boolean): number =>
  changesOfEnds + sets.length + (over || isSealed ? 1 : 0);

/** Counts up with every change of ends, end of a set and the end of the match; 0 at the start. */
export const breaksOf = (view: MatchView): number => breaksAt(view.score, view.sealed);

/** Whether such a moment came after the point `raisedBy` began; false for a point that does not count. SPEC AL5. */
export const hasBreakSince = (view: MatchView, raisedBy: string): boolean => {
  const point = view.points.find(({ id }) => id === raisedBy);
  return point !== undefined && breaksOf(view) > breaksAt(point.before, false);
};
