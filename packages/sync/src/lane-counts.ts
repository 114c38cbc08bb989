import type { LaneState } from "./lane-state.ts";

/** Entries on this phone that the server has not acknowledged. Rejected ones are not unsent: the server answered. */
export const unsentCount = (state: LaneState): number =>
  state.entries.length + state.pending.length - Math.min(state.record.acked, state.entries.length);
