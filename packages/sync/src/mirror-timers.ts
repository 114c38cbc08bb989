import type { Clock } from "@courtloom/core";

/** Timers behind an interface, so that tests drive them by hand. */
export interface Timers {
  /** Calls `act` once after `ms`; returns how to call it off. */
  readonly after: (ms: number, act: () => void) => () => void;
}

export const deviceTimers: Timers = {
  after: (ms, act) => {
    const id = setTimeout(act, ms);
    return () => clearTimeout(id);
  },
};

export const mirrorClock: Clock = {
  wallMs: () => Date.now(),
  monotonicMs: () => performance.now(),
};
