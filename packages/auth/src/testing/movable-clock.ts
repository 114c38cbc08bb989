import type { Clock } from "@courtloom/core";

export interface MovableClock extends Clock {
  readonly advance: (ms: number) => void;
}

/** A clock that stands still until it is moved. */
export const makeMovableClock = (startMs: number): MovableClock => {
  let nowMs = startMs;
  return {
    wallMs: () => nowMs,
    monotonicMs: () => nowMs - startMs,
    advance: (ms) => {
      nowMs += ms;
    },
  };
};
