import type { Clock } from "@courtloom/core";
import type { Entry, EntryBody } from "@courtloom/match-log";
import type { Channel } from "./channel.ts";
import { laneClock } from "./lane-clock.ts";
import { type LaneDevice, laneDevice } from "./lane-device.ts";
import { stepLane } from "./lane-machine.ts";
import type { LaneRecord } from "./lane-record.ts";
import type { LaneAction, LaneEnv, LaneEvent, LaneState } from "./lane-state.ts";
import { type LaneStatus, laneStatus } from "./lane-status.ts";
import { createLaneStorage } from "./lane-storage.ts";
import { sendLaneMessage } from "./lane-talk.ts";
import { createLaneTimers } from "./lane-timers.ts";
import type { Outbox } from "./outbox.ts";
import { startLane } from "./start-lane.ts";

/** One charting session on one match, kept in step with the server for as long as it is not closed. */
export interface Lane {
  readonly record: () => LaneRecord;
  /** Entries that are safe on this phone, by n. The same array until something changes. */
  readonly entries: () => readonly Entry[];
  readonly status: () => LaneStatus;
  /** Numbers and stores a fact; resolves once it is stored, before anything is sent. */
  readonly chart: (body: EntryBody) => Promise<void>;
  readonly onChange: (handler: () => void) => () => void;
  /** After a refusal: asks the server again. */
  readonly tryAgain: () => void;
  /** A person asks for the lead. What came of it is in the status; does nothing while entries of this lane are unsent. */
  readonly takeOver: () => void;
  /** A person charts beside whoever leads; does nothing while a lane that lost the lead has entries unsent. */
  readonly chartSecond: () => void;
  /** The log says that the lead went to another lane: asks who has it. */
  readonly leadMoved: () => void;
  /** The match was sealed: starts the 14 days that its entries stay on this phone. */
  readonly markSealed: () => void;
  /** Stops sending and listening; nothing stored is touched. */
  readonly close: () => void;
}

export interface LaneOptions {
  readonly record: LaneRecord;
  readonly entries: readonly Entry[];
  readonly outbox: Outbox;
  readonly channel: Channel;
  readonly clock: Clock;
  /** Default: this browser. */
  readonly device?: LaneDevice;
}

/** Runs the lane machine: carries out what each step says and feeds back what came of it. Has no rules of its own. */
const runLane = (options: LaneOptions, changed: () => void) => {
  const { record, entries, outbox, channel, clock, device = laneDevice } = options;
  const env: LaneEnv = { random: device.random, wallMs: clock.wallMs, laneId: device.laneId };
  let state: LaneState = startLane(record, entries);
  let closed = false;
  const dispatch = (event: LaneEvent): void => {
    if (closed) return;
    const before = state;
    const step = stepLane(state, event, env);
    state = step.state;
    for (const action of step.actions) carryOut(action);
    if (state !== before) changed();
  };
  const storage = createLaneStorage(outbox, device.timers, dispatch);
  const timers = createLaneTimers(device.timers, dispatch);
  const carryOut = (action: LaneAction): void => {
    switch (action.type) {
      case "store":
        storage.store(action.laneId, action.entry);
        break;
      case "fork":
        storage.fork(action);
        break;
      case "saveLane":
        storage.saveLane(action.record);
        break;
      case "retryIn":
        timers.retryIn(action.ms);
        break;
      case "beatIn":
        timers.beatIn(action.ms);
        break;
      default:
        void sendLaneMessage(channel, action, dispatch);
    }
  };
  const stop = () => {
    closed = true;
    timers.stop();
    storage.stop();
  };
  return { dispatch, state: () => state, stop };
};

/** Starts or resumes a lane and keeps it in step with the server through `channel`, across losses of signal. */
export const createLane = (options: LaneOptions): Lane => {
  const { entries, channel, clock, device = laneDevice } = options;
  const atMs = laneClock(clock, entries.at(-1));
  const handlers = new Set<() => void>();
  const waiting = new Map<string, () => void>();
  const resolveStored = () => {
    if (waiting.size === 0) return;
    for (const { id } of run.state().entries) {
      waiting.get(id)?.();
      waiting.delete(id);
    }
  };
  const run = runLane(options, () => {
    resolveStored();
    for (const handler of handlers) handler();
  });
  const stopListening = channel.onState((link) =>
    run.dispatch({ type: link === "open" ? "linkUp" : "linkDown" }),
  );
  if (channel.state() === "open") run.dispatch({ type: "linkUp" });

  return {
    record: () => run.state().record,
    entries: () => run.state().entries,
    status: () => laneStatus(run.state()),
    chart: (body) =>
      new Promise((resolve) => {
        const id = device.entryId();
        waiting.set(id, resolve);
        run.dispatch({ type: "charted", id, atMs: atMs(), wallMs: clock.wallMs(), body });
      }),
    onChange: (handler) => {
      handlers.add(handler);
      return () => handlers.delete(handler);
    },
    tryAgain: () => run.dispatch({ type: "tryAgain" }),
    takeOver: () => run.dispatch({ type: "takeOver" }),
    chartSecond: () => run.dispatch({ type: "chartSecond" }),
    leadMoved: () => run.dispatch({ type: "leadMoved" }),
    markSealed: () => run.dispatch({ type: "sealed", wallMs: clock.wallMs() }),
    close: () => {
      stopListening();
      run.stop();
    },
  };
};
