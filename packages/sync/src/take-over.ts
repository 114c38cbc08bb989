import { carryOn } from "./fork-lane.ts";
import { unsentCount } from "./lane-counts.ts";
import type { LaneEnv, LaneState, LaneStep } from "./lane-state.ts";

/**
 * A person asks for the lead. A lane has one epoch for ever, so a lane that had the lead and lost it, or a second
 * one, ends here, and a new one asks; that waits until all of the old one is on the server, where it stays in its own place.
 * Nothing happens without a link, nor while no other lane is known to lead.
 */
export const takeOver = (state: LaneState, env: LaneEnv): LaneStep => {
  const wanting = state.leader !== undefined || state.record.second === true;
  if (!wanting || state.link === "down" || state.phase === "forking") return { state, actions: [] };
  const asking: LaneState = { ...state, takesOver: true, waiting: false };
  if (state.record.epoch === 0 && !state.record.second) {
    // An answer that is under way is to an older question.
    const { inFlight: _, ...rest } = asking;
    return { state: rest, actions: [] };
  }
  if (unsentCount(state) > 0) return { state, actions: [] };
  return carryOn(asking, state.entries.length + 1, env, false);
};
