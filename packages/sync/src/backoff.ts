const FIRST_MS = 500;
const LONGEST_MS = 15_000;

/**
 * How long to wait after `failures` failures in a row (0 for the first), in milliseconds: doubles from
 * 0.5 s to 15 s, spread by ± 25 % so that phones which lost one server do not come back as one.
 * `random` is in [0, 1).
 */
export const backoffMs = (failures: number, random: number): number => {
  const step = Math.min(LONGEST_MS, FIRST_MS * 2 ** Math.min(failures, 10));
  return Math.round(Math.min(LONGEST_MS, step * (0.75 + random * 0.5)));
};
