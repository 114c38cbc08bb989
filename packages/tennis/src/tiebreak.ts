import type { TiebreakEnds } from "./format.ts";
import type { Pair } from "./pair.ts";
import type { TiebreakRules } from "./set-rules.ts";

export const isTiebreakWon = (rules: TiebreakRules, points: Pair): boolean =>
  Math.max(points[0], points[1]) >= rules.to && Math.abs(points[0] - points[1]) >= rules.winBy;

/** Level, and one point short under a rule of one clear point: the next point decides. */
export const isTiebreakDeciding = (rules: TiebreakRules, points: Pair): boolean =>
  rules.winBy === 1 && points[0] === points[1] && points[0] === rules.to - 1;

/**
 * Turns of service finished before the point numbered `points` from 0: the opening side serves in even
 * turns, the other in odd ones. 1-2-2-2 …, or 2-2-2 … whose deciding point stays with the last server. SPEC SC14.
 */
export function turnOfService(rules: TiebreakRules, points: Pair): number {
  const played = points[0] + points[1];
  if (rules.serve === "oneThenTwo") return Math.floor((played + 1) / 2);
  const counted = isTiebreakDeciding(rules, points) && played > 0 ? played - 1 : played;
  return Math.floor(counted / 2);
}

const CHANGES_AFTER: Readonly<Record<TiebreakEnds, (played: number) => number>> = {
  six: (played) => Math.floor(played / 6),
  coman: (played) => Math.floor((played + 3) / 4),
  everyFour: (played) => Math.floor(played / 4),
  firstFour: (played) => (played >= 4 ? 1 : 0),
  none: () => 0,
};

/** Changes of ends within a tie-break of which `played` points are over, the one now due included. SPEC SC15. */
export const changesWithin = (ends: TiebreakEnds, played: number): number => CHANGES_AFTER[ends](played);

/** Whether ends change after the point that makes `played`. */
export const isChangeAfter = (ends: TiebreakEnds, played: number): boolean =>
  changesWithin(ends, played) > changesWithin(ends, played - 1);
