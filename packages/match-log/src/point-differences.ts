import { CHARTING_LEVELS, type Point } from "./point.ts";
import type { ViewedPoint } from "./view.ts";

export const POINT_DIFFERENCES = ["winner", "serve", "ending", "shots"] as const;
/** What two people charted differently of one point. */
export type PointDifference = (typeof POINT_DIFFERENCES)[number];

const isOther = <T>(a: T | undefined, b: T | undefined): boolean =>
  a !== undefined && b !== undefined && a !== b;

const endsOther = (a: Point, b: Point): boolean => {
  const [last, theirs] = [a.shots.at(-1), b.shots.at(-1)];
  if (!last || !theirs) return false;
  const othersShot = last.striker !== theirs.striker;
  return othersShot || isOther(last.result, theirs.result) || isOther(last.miss, theirs.miss);
};

/** At one level of the same players; who charts another player's balls says nothing of these. */
const comparesShots = (a: ViewedPoint, b: ViewedPoint): boolean =>
  a.point.level === b.point.level && (a.point.level === "every" || a.subjects.join() === b.subjects.join());

/**
 * What two tellings of one point say differently. What only one of them says is no difference, nor are the
 * places of drawn balls, which no two people see alike. Empty when they agree.
 */
export const pointDifferences = (a: ViewedPoint, b: ViewedPoint): readonly PointDifference[] => {
  const differs: Readonly<Record<PointDifference, boolean>> = {
    winner: a.point.winner !== b.point.winner,
    serve: isOther(a.point.serve?.outcome, b.point.serve?.outcome),
    ending: comparesShots(a, b) && endsOther(a.point, b.point),
    shots:
      a.point.level === "every" && b.point.level === "every" && a.point.shots.length !== b.point.shots.length,
  };
  return POINT_DIFFERENCES.filter((difference) => differs[difference]);
};

/** Whether `other` charted more of the point than `lead` did, of the same players. */
export const chartsMore = (lead: ViewedPoint, other: ViewedPoint): boolean => {
  const rank = (viewed: ViewedPoint): number => CHARTING_LEVELS.indexOf(viewed.point.level);
  return rank(other) > rank(lead) && keepsSubjects(lead, other);
};

/** Whether the balls that `other` drew are of the players whom `lead` charted. */
export const keepsSubjects = (lead: Pick<ViewedPoint, "subjects">, other: ViewedPoint): boolean =>
  other.point.level !== "key" || lead.subjects.join() === other.subjects.join();
