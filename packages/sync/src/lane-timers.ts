import type { LaneEvent } from "./lane-state.ts";
import type { Timers } from "./mirror-timers.ts";

/** The two timers of a lane; setting one replaces it. */
export interface LaneTimers {
  readonly retryIn: (ms: number) => void;
  readonly beatIn: (ms: number) => void;
  readonly stop: () => void;
}

export const createLaneTimers = (timers: Timers, report: (event: LaneEvent) => void): LaneTimers => {
  let stopRetry = (): void => undefined;
  let stopBeat = (): void => undefined;
  return {
    retryIn: (ms) => {
      stopRetry();
      stopRetry = timers.after(ms, () => report({ type: "retryDue" }));
    },
    beatIn: (ms) => {
      stopBeat();
      stopBeat = timers.after(ms, () => report({ type: "beatDue" }));
    },
    stop: () => {
      stopRetry();
      stopBeat();
    },
  };
};
