import type { LaneAppended, LaneAppendReply, RejectedEntry } from "@courtloom/protocol";
import { MAX_BATCH_ENTRIES } from "@courtloom/protocol/names";
import { forkLane } from "./fork-lane.ts";
import type { InFlight, LaneEnv, LaneState, LaneStep } from "./lane-state.ts";
import { refused, waitAndRetry } from "./refused.ts";

const merge = (held: readonly RejectedEntry[], more: readonly RejectedEntry[]): readonly RejectedEntry[] => [
  ...held.filter((old) => !more.some((fresh) => fresh.n === old.n)),
  ...more,
];

const appended = (state: LaneState, sent: InFlight, reply: LaneAppended, env: LaneEnv): LaneStep => {
  // Only what was in this batch was compared with what the server holds.
  const acked = Math.max(state.record.acked, Math.min(reply.upTo, sent.upTo));
  if (acked === state.record.acked) return waitAndRetry(state, env);
  const record = { ...state.record, acked, rejected: merge(state.record.rejected, reply.rejected) };
  return {
    state: { ...state, record, failures: 0, batchSize: MAX_BATCH_ENTRIES },
    actions: [{ type: "saveLane", record }],
  };
};

/** Goes back (or on) to the entry that the server waits for; acknowledged entries are still here to be sent again. */
const gap = (state: LaneState, expect: number, env: LaneEnv): LaneStep => {
  const acked = Math.min(Math.max(0, expect - 1), state.entries.length);
  // Told to send what was just sent: something is wrong on the way; do not spin.
  if (acked === state.record.acked) return waitAndRetry(state, env);
  const record = { ...state.record, acked };
  return { state: { ...state, record }, actions: [{ type: "saveLane", record }] };
};

/** Takes in the answer to `lane.append`; a late answer to an older request changes nothing. */
export const appendAnswered = (
  state: LaneState,
  request: number,
  reply: LaneAppendReply,
  env: LaneEnv,
): LaneStep => {
  const sent = state.inFlight;
  if (sent?.request !== request) return { state, actions: [] };
  const { inFlight: _, ...landed } = state;
  if (landed.phase !== "open") return { state: landed, actions: [] };
  if (reply.ok) return appended(landed, sent, reply, env);
  switch (reply.code) {
    case "gap":
      return gap(landed, reply.expect, env);
    case "identity_conflict":
      return forkLane(landed, reply.n, env);
    case "other_incarnation":
      return waitAndRetry({ ...landed, phase: "closed" }, env);
    default:
      return refused(landed, reply, env);
  }
};
