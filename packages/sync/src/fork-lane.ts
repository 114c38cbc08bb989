import type { Entry } from "@courtloom/match-log";
import type { LaneRecord } from "./lane-record.ts";
import type { LaneEnv, LaneState, LaneStep } from "./lane-state.ts";
import { waitAndRetry } from "./refused.ts";

const successor = (record: LaneRecord, env: LaneEnv, beside: boolean): LaneRecord => {
  const { continuedBy: _, second: __, continuedFrom: ___, ...kept } = record;
  const fresh = {
    ...kept,
    laneId: env.laneId(),
    acked: 0,
    epoch: 0,
    rejected: [],
    startedWallMs: env.wallMs(),
  };
  return beside ? { ...fresh, second: true } : fresh;
};

/**
 * This lane ends before `fromN`; a new lane carries on with this phone's entries from there, renumbered, with
 * their own ids. The old lane keeps them too: both sides stay. Nothing is sent until the new lane is stored,
 * so that a crash in between cannot send them twice. `beside`: the new lane is a second one; by default what
 * the old one was.
 */
export const carryOn = (
  state: LaneState,
  fromN: number,
  env: LaneEnv,
  beside: boolean = state.record.second === true,
): LaneStep => {
  const all: readonly Entry[] = [...state.entries, ...state.pending];
  const opened = successor(state.record, env, beside);
  const entries = all.slice(fromN - 1).map((entry, i) => ({ ...entry, n: i + 1 }));
  const { inFlight: _, stoppedBy: __, ...rest } = state;
  return {
    state: { ...rest, record: opened, entries: [], pending: entries, phase: "forking", failures: 0 },
    actions: [
      {
        type: "fork",
        closed: { ...state.record, continuedBy: opened.laneId, continuedFrom: fromN },
        opened,
        entries,
      },
    ],
  };
};

/**
 * Two different entries have the number `fromN` in one lane (two pages of one browser, or a device set
 * back to an older state): this phone's go on in a new lane.
 */
export const forkLane = (state: LaneState, fromN: number, env: LaneEnv): LaneStep => {
  const isThere = fromN >= 1 && fromN <= state.entries.length + state.pending.length;
  return isThere ? carryOn(state, fromN, env) : waitAndRetry(state, env);
};
