const FIRST_MS = 200;
const LONGEST_MS = 15_000;
/** A child that ran this long was well; the next fall counts as the first. */
const WELL_AFTER_MS = 30_000;

/** How many times in a row a child has fallen, after one that ran for `ranMs`. */
export function fallsAfter(falls: number, ranMs: number): number {
  return ranMs >= WELL_AFTER_MS ? 1 : falls + 1;
}

/** Pause before the start that follows the `falls`-th fall in a row: 200 ms, doubled each time, at most 15 s. */
export function pauseBeforeStartMs(falls: number): number {
  return Math.min(LONGEST_MS, FIRST_MS * 2 ** Math.max(0, falls - 1));
}
