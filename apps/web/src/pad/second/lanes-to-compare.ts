import {
  compareLanes,
  type LaneComparison,
  type LaneRow,
  type LoggedEntry,
  lanesBeside,
  type MatchView,
} from "@courtloom/match-log";

/** Every lane that charted a point beside the score, compared with it. */
export const lanesToCompare = (log: readonly LoggedEntry[], view: MatchView): readonly LaneComparison[] =>
  lanesBeside(view).flatMap((laneId) => {
    const comparison = compareLanes(log, view, laneId);
    return comparison && comparison.pointCount > 0 ? [comparison] : [];
  });

/** Rows that a person may want to look at: what differs or is only there. */
export const rowsToJudge = ({ rows }: LaneComparison): readonly LaneRow[] =>
  rows.filter(({ kind }) => kind === "differs" || kind === "laneOnly");

/**
 * How many points a person should be told of. The newest point of somebody who charts at the same time is left
 * out: the lead charts it a moment later.
 */
export const countToTell = (comparison: LaneComparison): number => {
  const rows = rowsToJudge(comparison);
  const last = comparison.rows.at(-1);
  const newest = comparison.role === "second" && last?.kind === "laneOnly";
  return rows.length - (newest ? 1 : 0);
};
