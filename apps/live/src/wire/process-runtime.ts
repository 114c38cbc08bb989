import { performance } from "node:perf_hooks";
import type { Clock } from "@courtloom/core";
import type { Timers } from "../runtime.ts";

/** The machine's clocks. */
export const processClock: Clock = {
  wallMs: () => Date.now(),
  monotonicMs: () => performance.now(),
};

/** The process's timers; a clock alone keeps no process alive. */
export const processTimers: Timers = {
  after: (ms, run) => {
    const timer = setTimeout(run, ms);
    timer.unref();
    return () => clearTimeout(timer);
  },
};
