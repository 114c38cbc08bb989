import type { LaneOpened, LaneOpenReply, LeadTakenRefusal } from "@courtloom/protocol";
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
  const { leader: _, stoppedBy: __, ...rest } = state;
  const led: LaneState = reply.leader ? { ...rest, leader: reply.leader } : rest;
  return {
    state: { ...led, record, phase: "open", failures: 0 },
    actions: [
      { type: "saveLane", record },
      { type: "beatIn", ms: BEAT_EVERY_MS },
    ],
  };
};

/** How often it is asked how the lead fares when the server does not say. */
const LOOK_AGAIN_MS = 3_000;

/**
 * The log was restored to before this lane, and another one leads since: what it holds goes on as a second lane,
 * so that nothing of it waits on this phone for ever. SPEC SY41.
 */
const goesOnAsSecond = (state: LaneState, leader: LeadTakenRefusal["leader"]): LaneStep => {
  const record = { ...state.record, second: true } as const;
  const next: LaneState = { ...state, record, phase: "closed", failures: 0, leader };
  return { state: next, actions: [{ type: "saveLane", record }] };
};

/** Stays stopped, and asks again by itself: not for the lead, but to hear how the one who has it fares. */
const leadTaken = (state: LaneState, { leader, afterMs }: LeadTakenRefusal): LaneStep => ({
  state: { ...state, phase: "stopped", stoppedBy: "lead_taken", failures: 0, waiting: true, leader },
  actions: [{ type: "retryIn", ms: afterMs ?? LOOK_AGAIN_MS }],
});

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
  if (!reply.ok && !("leader" in reply)) return refused(landed, reply, env);
  // The person's wish was heard, whatever came of it; it is not repeated by itself.
  const { takesOver: __, ...heard } = landed;
  if (reply.ok) return opened(heard, reply);
  const wasLed = heard.record.epoch !== 0 && heard.record.second !== true;
  return wasLed ? goesOnAsSecond(heard, reply.leader) : leadTaken(heard, reply);
};
