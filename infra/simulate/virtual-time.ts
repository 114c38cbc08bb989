import type { Clock } from "@courtloom/core";

/** A device's clocks: the wall clock can be moved, the monotonic one cannot. */
export interface VirtualClock extends Clock {
  readonly jump: (byMs: number) => void;
}

export interface VirtualTime {
  /** Milliseconds since the schedule began. */
  readonly nowMs: () => number;
  /** Runs once after `ms`; returns how to call it off. Equal times run in the order they were asked for. */
  readonly after: (ms: number, run: () => void) => () => void;
  readonly wait: (ms: number) => Promise<void>;
  readonly clock: () => VirtualClock;
  /**
   * Lets time pass; whatever an alarm begins is carried on, as far as it waits for no other, before the next.
   * An alarm that throws is told to `failed`, and the others go on.
   */
  readonly runUntil: (untilMs: number, failed: (error: unknown) => void) => Promise<void>;
}

interface Alarm {
  readonly atMs: number;
  readonly run: () => void;
}

const STARTS_AT_MS = 1_780_000_000_000;

/** All promises that can go on without an alarm have gone on when this one resolves. */
const settled = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

export const createVirtualTime = (): VirtualTime => {
  const alarms = new Set<Alarm>();
  let nowMs = 0;
  const nextDue = (untilMs: number): Alarm | undefined => {
    let first: Alarm | undefined;
    for (const alarm of alarms) {
      if (alarm.atMs > untilMs) continue;
      // A set keeps the order in which alarms were asked for, so an equal time never replaces an earlier one.
      if (first === undefined || alarm.atMs < first.atMs) first = alarm;
    }
    return first;
  };
  const after: VirtualTime["after"] = (ms, run) => {
    const alarm = { atMs: nowMs + Math.max(0, Math.round(ms)), run };
    alarms.add(alarm);
    return () => void alarms.delete(alarm);
  };
  return {
    nowMs: () => nowMs,
    after,
    wait: (ms) => new Promise((resolve) => after(ms, resolve)),
    clock: () => {
      let offsetMs = 0;
      return {
        wallMs: () => STARTS_AT_MS + nowMs + offsetMs,
        monotonicMs: () => nowMs,
        jump: (byMs) => {
          offsetMs += byMs;
        },
      };
    },
    runUntil: async (untilMs, failed) => {
      await settled();
      for (let due = nextDue(untilMs); due; due = nextDue(untilMs)) {
        alarms.delete(due);
        nowMs = due.atMs;
        try {
          due.run();
        } catch (error) {
          failed(error);
        }
        await settled();
      }
      nowMs = untilMs;
    },
  };
};
