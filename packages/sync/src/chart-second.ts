import { carryOn } from "./fork-lane.ts";
import { unsentCount } from "./lane-counts.ts";
import type { LaneEnv, LaneState, LaneStep } from "./lane-state.ts";

/** A lane that the server does not have yet becomes a second one, with all that was charted in it. */
const becomeSecond = (state: LaneState): LaneStep => {
  const record = { ...state.record, second: true as const };
  const { inFlight: _, stoppedBy: __, takesOver: ___, ...rest } = state;
  return {
    state: { ...rest, record, phase: "closed", waiting: false, failures: 0 },
    actions: [{ type: "saveLane", record }],
  };
};

/**
 * A person charts beside whoever leads. A lane that had the lead and lost it ends here, once all of it is sent,
 * and a second one begins; a lane that never led becomes the second one, also without a link. Nothing happens
 * while no other lane is known to lead. SPEC SY34.
 */
export const chartSecond = (state: LaneState, env: LaneEnv): LaneStep => {
  if (!state.leader || state.record.second || state.phase === "forking") return { state, actions: [] };
  if (state.record.epoch === 0) return becomeSecond(state);
  if (unsentCount(state) > 0) return { state, actions: [] };
  return carryOn(state, state.entries.length + 1, env, true);
};
