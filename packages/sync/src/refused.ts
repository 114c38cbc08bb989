import type { Refusal, RefusalCode } from "@courtloom/protocol";
import { backoffMs } from "./backoff.ts";
import type { LaneEnv, LaneState, LaneStep } from "./lane-state.ts";

/** Waits, longer after each failure in a row or as long as the server asked for, and tries again. */
export const waitAndRetry = (state: LaneState, env: LaneEnv, afterMs?: number): LaneStep => ({
  state: { ...state, waiting: true, failures: state.failures + 1 },
  actions: [{ type: "retryIn", ms: Math.max(afterMs ?? 0, backoffMs(state.failures, env.random())) }],
});

const stop = (state: LaneState, stoppedBy: RefusalCode): LaneStep => ({
  state: { ...state, phase: "stopped", stoppedBy, failures: 0 },
  actions: [],
});

const tooLarge = (state: LaneState, env: LaneEnv): LaneStep =>
  state.batchSize === 1
    ? stop(state, "too_large")
    : waitAndRetry({ ...state, batchSize: Math.max(1, Math.floor(state.batchSize / 4)) }, env);

const stopSealed = (state: LaneState, env: LaneEnv): LaneStep => {
  const record = { ...state.record, sealedWallMs: state.record.sealedWallMs ?? env.wallMs() };
  const stopped = stop({ ...state, record }, "sealed");
  return { ...stopped, actions: [{ type: "saveLane", record }] };
};

/**
 * What a refusal does to a lane: some pass by themselves, some need a person. None deletes anything,
 * and `acked` never moves because of one.
 */
export const refused = (state: LaneState, { code, retry, afterMs }: Refusal, env: LaneEnv): LaneStep => {
  switch (code) {
    case "unknown_lane":
      return waitAndRetry({ ...state, phase: "closed" }, env, afterMs);
    case "too_large":
      return tooLarge(state, env);
    case "sealed":
      return stopSealed(state, env);
    case "busy":
    case "unavailable":
      return waitAndRetry(state, env, afterMs);
    default:
      return retry ? waitAndRetry(state, env, afterMs) : stop(state, code);
  }
};
