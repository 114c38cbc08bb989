import { ENTRY_VERSION, type Entry } from "@courtloom/match-log";
import type { LaneBeatReply, LaneChartist, RefusalCode } from "@courtloom/protocol";
import { BEAT_EVERY_MS, PROTOCOL_VERSION } from "@courtloom/protocol/names";
import { appendAnswered } from "./append-answered.ts";
import { chartSecond } from "./chart-second.ts";
import { forkLane } from "./fork-lane.ts";
import { unsentCount } from "./lane-counts.ts";
import type { LaneAction, LaneEnv, LaneEvent, LaneState, LaneStep } from "./lane-state.ts";
import { openAnswered } from "./open-answered.ts";
import { pump } from "./pump.ts";
import { takeOver } from "./take-over.ts";
import { withClock } from "./with-clock.ts";

/** Refusals that a new connection may lift: the person may have signed in again meanwhile. */
const LIFTED_BY_LINK: ReadonlySet<RefusalCode> = new Set(["signed_out", "code_expired", "forbidden"]);

const only = (state: LaneState, ...actions: readonly LaneAction[]): LaneStep => ({ state, actions });

const restart = (state: LaneState): LaneState => {
  const { stoppedBy: _, inFlight: __, ...rest } = state;
  return { ...rest, phase: state.phase === "forking" ? "forking" : "closed", waiting: false, failures: 0 };
};

const linkUp = (state: LaneState): LaneState => {
  const up: LaneState = { ...state, link: "up" };
  const stays = state.phase === "stopped" && !(state.stoppedBy && LIFTED_BY_LINK.has(state.stoppedBy));
  return stays ? up : restart(up);
};

const linkDown = (state: LaneState): LaneState => {
  // Asking for the lead is of the moment: after an absence the person sees how things stand and asks anew.
  const { inFlight: _, takesOver: __, ...rest } = state;
  return {
    ...rest,
    link: "down",
    phase: state.phase === "open" ? "closed" : state.phase,
    waiting: false,
  };
};

const charted = (state: LaneState, event: Extract<LaneEvent, { type: "charted" }>): LaneStep => {
  const entry: Entry = {
    v: ENTRY_VERSION,
    id: event.id,
    n: state.entries.length + state.pending.length + 1,
    atMs: event.atMs,
    wallMs: event.wallMs,
    body: event.body,
  };
  return only(
    { ...state, pending: [...state.pending, entry] },
    { type: "store", laneId: state.record.laneId, entry },
  );
};

const stored = (state: LaneState, count: number, safe: boolean): LaneState => ({
  ...state,
  entries: [...state.entries, ...state.pending.slice(0, count)],
  pending: state.pending.slice(count),
  unstored: state.unstored || !safe,
});

const beatDue = (state: LaneState, env: LaneEnv): LaneStep => {
  if (state.phase !== "open" || state.link === "down") return only(state);
  const { matchId, laneId } = state.record;
  const unsent = unsentCount(state);
  return only(
    state,
    { type: "sendBeat", message: { v: PROTOCOL_VERSION, matchId, laneId, unsent, wallMs: env.wallMs() } },
    { type: "beatIn", ms: BEAT_EVERY_MS },
  );
};

/** The state itself when nothing is new in it. */
const withOthers = (state: LaneState, others: readonly LaneChartist[] | undefined): LaneState =>
  !others || JSON.stringify(others) === JSON.stringify(state.others) ? state : { ...state, others };

const beatAnswered = (before: LaneState, reply: LaneBeatReply, env: LaneEnv): LaneStep => {
  const state = reply.ok
    ? withOthers(withClock(before, env.wallMs() - reply.serverMs), reply.others)
    : before;
  if (state.phase !== "open") return only(state);
  // Somebody took over, or how they fare is due: the answer to opening the lane again tells.
  // A second lane leads never, and hears who does when the log says that the lead went elsewhere.
  if (reply.ok) return only(reply.leads || state.record.second ? state : { ...state, phase: "closed" });
  // The server no longer knows this phone: open the lane again, and let that answer say why if it is for good.
  const known = !["signed_out", "code_expired", "forbidden", "unknown_lane"].includes(reply.code);
  return only(known ? state : { ...state, phase: "closed" });
};

const sealed = (state: LaneState, wallMs: number): LaneStep => {
  if (state.record.sealedWallMs !== undefined) return only(state);
  const record = { ...state.record, sealedWallMs: wallMs };
  return only({ ...state, record }, { type: "saveLane", record });
};

const react = (state: LaneState, event: LaneEvent, env: LaneEnv): LaneStep => {
  const mine = "laneId" in event && event.laneId === state.record.laneId;
  switch (event.type) {
    case "linkUp":
      return only(linkUp(state));
    case "linkDown":
      return only(linkDown(state));
    case "charted":
      return charted(state, event);
    case "stored":
      return only(mine ? stored(state, 1, event.safe) : state);
    case "caughtUp":
      return only({ ...state, unstored: false });
    case "taken":
      return mine ? forkLane(state, event.n, env) : only(state);
    case "forkStored":
      return only(mine ? { ...stored(state, event.count, event.safe), phase: "closed" } : state);
    case "openAnswered":
      return openAnswered(state, event.request, event.reply, env);
    case "appendAnswered":
      return appendAnswered(state, event.request, event.reply, env);
    case "beatAnswered":
      return mine ? beatAnswered(state, event.reply, env) : only(state);
    case "retryDue":
      return only({ ...state, waiting: false });
    case "beatDue":
      return beatDue(state, env);
    case "tryAgain":
      return only(state.phase === "stopped" ? restart(state) : state);
    case "takeOver":
      return takeOver(state, env);
    case "chartSecond":
      return chartSecond(state, env);
    case "leadMoved":
      return only(state.phase === "open" ? { ...state, phase: "closed" } : state);
    case "sealed":
      return sealed(state, event.wallMs);
  }
};

/**
 * One step of a lane: what happened in, the new state and what to do out. Pure; whoever drives it
 * carries the actions out in order and reports back as events. After every event whatever can be sent
 * is sent, so no event can leave a lane with work and nobody doing it.
 */
export const stepLane = (state: LaneState, event: LaneEvent, env: LaneEnv): LaneStep => {
  const reacted = react(state, event, env);
  const pumped = pump(reacted.state);
  return { state: pumped.state, actions: [...reacted.actions, ...pumped.actions] };
};
