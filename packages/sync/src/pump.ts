import { PROTOCOL_VERSION } from "@courtloom/protocol/names";
import type { LaneState, LaneStep } from "./lane-state.ts";
import { nextBatch } from "./next-batch.ts";

const sendOpen = (state: LaneState): LaneStep => {
  const { matchId, laneId, level, second } = state.record;
  const request = state.requests + 1;
  const message = { v: PROTOCOL_VERSION, matchId, laneId, level, ...(second ? { second } : {}) } as const;
  return {
    state: { ...state, requests: request, inFlight: { request, kind: "open", upTo: 0 } },
    actions: [
      { type: "sendOpen", request, message: state.takesOver ? { ...message, takeOver: true } : message },
    ],
  };
};

const sendBatch = (state: LaneState, incarnation: string): LaneStep => {
  const { matchId, laneId, acked } = state.record;
  const entries = nextBatch(state.entries, acked, state.batchSize);
  const request = state.requests + 1;
  return {
    state: {
      ...state,
      requests: request,
      inFlight: { request, kind: "append", upTo: acked + entries.length },
    },
    actions: [
      {
        type: "sendAppend",
        request,
        message: { v: PROTOCOL_VERSION, matchId, laneId, incarnation, entries },
      },
    ],
  };
};

/** Sends the next thing that is due, if anything is and nothing is in the way. */
export const pump = (state: LaneState): LaneStep => {
  const idle: LaneStep = { state, actions: [] };
  if (state.link === "down" || state.inFlight || state.waiting) return idle;
  const waitsForLead = state.phase === "stopped" && state.stoppedBy === "lead_taken" && state.leader;
  if (state.phase === "closed" || waitsForLead) return sendOpen(state);
  const { incarnation, acked } = state.record;
  if (state.phase !== "open" || incarnation === undefined || acked >= state.entries.length) return idle;
  return sendBatch(state, incarnation);
};
