import type { Clock } from "@courtloom/core";
import type { Timers } from "../runtime.ts";

export interface FakeTime {
  readonly clock: Clock;
  readonly timers: Timers;
  /** Lets `ms` pass: timers fire in the order of their times, and what they begin is carried on before the next. */
  readonly advance: (ms: number) => Promise<void>;
  /** Carries on everything that waits for no timer. */
  readonly settle: () => Promise<void>;
}

interface Alarm {
  readonly atMs: number;
  readonly order: number;
  readonly run: () => void;
}

export const createFakeTime = (startMs = 1_780_000_000_000): FakeTime => {
  let nowMs = 0;
  let order = 0;
  const alarms = new Set<Alarm>();
  const settle = async (): Promise<void> => {
    for (let i = 0; i < 5; i += 1) await new Promise((resolve) => setImmediate(resolve));
  };
  const nextDue = (untilMs: number): Alarm | undefined =>
    [...alarms].filter(({ atMs }) => atMs <= untilMs).sort((a, b) => a.atMs - b.atMs || a.order - b.order)[0];
  return {
    clock: { wallMs: () => startMs + nowMs, monotonicMs: () => nowMs },
    timers: {
      after: (ms, run) => {
        order += 1;
        const alarm = { atMs: nowMs + ms, order, run };
        alarms.add(alarm);
        return () => alarms.delete(alarm);
      },
    },
    advance: async (ms) => {
      const untilMs = nowMs + ms;
      await settle();
      for (let due = nextDue(untilMs); due; due = nextDue(untilMs)) {
        alarms.delete(due);
        nowMs = due.atMs;
        due.run();
        await settle();
      }
      nowMs = untilMs;
    },
    settle,
  };
};
