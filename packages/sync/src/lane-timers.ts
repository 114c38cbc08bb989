import type { LaneEvent } from "./lane-state.ts";

/** The two timers of a lane; setting one replaces it. */
export interface LaneTimers {
  readonly retryIn: (ms: number) => void;
  readonly beatIn: (ms: number) => void;
  readonly stop: () => void;
}

export const createLaneTimers = (report: (event: LaneEvent) => void): LaneTimers => {
  let retry: ReturnType<typeof setTimeout> | undefined;
  let beat: ReturnType<typeof setTimeout> | undefined;
  return {
    retryIn: (ms) => {
      clearTimeout(retry);
      retry = setTimeout(() => report({ type: "retryDue" }), ms);
    },
    beatIn: (ms) => {
      clearTimeout(beat);
      beat = setTimeout(() => report({ type: "beatDue" }), ms);
    },
    stop: () => {
      clearTimeout(retry);
      clearTimeout(beat);
    },
  };
};
