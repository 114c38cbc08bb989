import type { Clock } from "@courtloom/core";

/** Messages per second that a socket may send on and on, and how many at once after a pause. */
export const BUDGET_PER_SECOND = 20;
export const BUDGET_BURST = 200;

export interface Budget {
  /** Takes one; answers 0, or in how many milliseconds there is one again. */
  readonly take: () => number;
}

/** A bucket that holds `burst` and fills by `perSecond`. */
export const createBudget = (clock: Clock, perSecond = BUDGET_PER_SECOND, burst = BUDGET_BURST): Budget => {
  let left = burst;
  let countedMs = clock.monotonicMs();
  return {
    take: () => {
      const nowMs = clock.monotonicMs();
      left = Math.min(burst, left + ((nowMs - countedMs) / 1000) * perSecond);
      countedMs = nowMs;
      if (left < 1) return Math.ceil(((1 - left) / perSecond) * 1000);
      left -= 1;
      return 0;
    },
  };
};
