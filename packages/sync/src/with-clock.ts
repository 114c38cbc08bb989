import type { LaneState } from "./lane-state.ts";

/** Up to here a phone's clock is as good as right: times are shown in minutes. */
export const CLOCK_OFF_MS = 2 * 60_000;

const MINUTE_MS = 60_000;

/**
 * Notes how far this phone's clock is ahead of the server's, in whole minutes (negative: behind), once it is off
 * by more than two. For showing only: the order of entries never comes from a wall clock. The same state as
 * long as nothing changes. SPEC SY20.
 */
export const withClock = (state: LaneState, aheadMs: number): LaneState => {
  const minutes = Math.abs(aheadMs) > CLOCK_OFF_MS ? Math.round(aheadMs / MINUTE_MS) : undefined;
  if (minutes === state.clockAheadMinutes) return state;
  const { clockAheadMinutes: _, ...rest } = state;
  return minutes === undefined ? rest : { ...rest, clockAheadMinutes: minutes };
};
