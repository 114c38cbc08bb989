import type { Clock } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";

/**
 * Milliseconds since the lane began, across reloads. The monotonic clock starts anew with each page,
 * so a resumed lane goes on from its last entry plus what the wall clock says has passed, and never
 * goes back, whatever the wall clock does.
 */
export const laneClock = (clock: Clock, last: Entry | undefined): (() => number) => {
  const passed = last === undefined ? 0 : Math.max(0, clock.wallMs() - last.wallMs);
  const base = (last?.atMs ?? 0) + passed;
  const start = clock.monotonicMs();
  let latest = base;
  return () => {
    // Never back, also where a browser's monotonic clock is put back under an open page.
    latest = Math.max(latest, base + clock.monotonicMs() - start);
    return Math.round(latest);
  };
};
