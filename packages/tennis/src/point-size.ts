/** Steps of size, the biggest first: a point is of a step when at most this share of the points is as big. */
export const POINT_SIZE_STEPS = [
  { step: "top5", share: 0.05 },
  { step: "top10", share: 0.1 },
  { step: "topQuarter", share: 0.25 },
] as const;

export type PointSizeStep = (typeof POINT_SIZE_STEPS)[number]["step"];

export interface PointSize {
  /** 1 for the biggest; equal ones share a rank. */
  readonly rank: number;
  /** Points that it was ranked among, itself included. */
  readonly of: number;
  /** `null` when it is of none, as in every list too short for the step: the top 5 % begin with 20 points. */
  readonly step: PointSizeStep | null;
}

/** Importances that differ by less are equal: the same score reached on two ways may differ in the last digit. */
const EQUAL = 1e-9;

/**
 * The size of a point as a rank, since the chances behind an importance are themselves uncertain and a rank
 * hardly feels it. `among` holds the importances of all points it is ranked among, its own included: those
 * so far for a live point, those of the match afterwards. `undefined` when that list is empty. SPEC W12, W13.
 */
export function pointSize(importance: number, among: readonly number[]): PointSize | undefined {
  if (among.length === 0) return undefined;
  const bigger = among.filter((other) => other > importance + EQUAL).length;
  const asBig = among.filter((other) => other >= importance - EQUAL).length;
  const step = POINT_SIZE_STEPS.find(({ share }) => asBig <= share * among.length);
  return { rank: bigger + 1, of: among.length, step: step?.step ?? null };
}
