import type { FrozenWatch } from "@courtloom/match-log";

/** A watch on side A's line balls: notices after two missed in a row, raises after four. */
export const sampleWatch = (changes: Partial<FrozenWatch> = {}): FrozenWatch => ({
  side: "A",
  rate: "lineMissed",
  version: 1,
  usual: 0.25,
  source: "own",
  up: 60,
  down: 32,
  horizon: 200,
  red: { first: 200, late: 200 },
  amber: { first: 120, late: 120 },
  alpha: 0.05,
  ...changes,
});
