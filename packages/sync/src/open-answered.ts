import type { LaneOpened, LaneOpenReply } from "@courtloom/protocol";
import { BEAT_EVERY_MS } from "@courtloom/protocol/names";
import type { LaneEnv, LaneState, LaneStep } from "./lane-state.ts";
import { refused } from "./refused.ts";

/**
 * The server's cursor only ever lowers `acked`: it rewinds after a restore. It never raises it, since
 * what the server holds under a number is known to be this phone's only when the server compared it.
 */
const opened = (state: LaneState, reply: LaneOpened): LaneStep => {
  const record = {
    ...state.record,
    opening: reply.opening,
    epoch: reply.epoch,
    incarnation: reply.incarnation,
    acked: Math.min(state.record.acked, reply.cursor),
  };
  return {
    state: { ...state, record, phase: "open", failures: 0 },
    actions: [
      { type: "saveLane", record },
      { type: "beatIn", ms: BEAT_EVERY_MS },
    ],
  };
};

/** Takes in the answer to `lane.open`; a late answer to an older request changes nothing. */
export const openAnswered = (
  state: LaneState,
  request: number,
  reply: LaneOpenReply,
  env: LaneEnv,
): LaneStep => {
  if (state.inFlight?.request !== request) return { state, actions: [] };
  const { inFlight: _, ...landed } = state;
  if (landed.phase === "forking") return { state: landed, actions: [] };
  return reply.ok ? opened(landed, reply) : refused(landed, reply, env);
};
