import type { Clock } from "@courtloom/core";
import { type Budget, createBudget } from "../message-budget.ts";

/** Failed handshakes of one address: so many at once, and one more every two seconds. */
const BURST = 30;
const PER_SECOND = 0.5;
const MOST_ADDRESSES = 10_000;

export interface FailureLimit {
  /** Counts a failure; false when the address has had too many lately. Whoever succeeds is never limited. */
  readonly allowsFailure: (address: string) => boolean;
}

/** A club's phones share one address, so only failures are counted by it. SPEC LV20. */
export const createFailureLimit = (clock: Clock): FailureLimit => {
  const budgets = new Map<string, Budget>();
  return {
    allowsFailure: (address) => {
      const budget = budgets.get(address) ?? createBudget(clock, PER_SECOND, BURST);
      budgets.delete(address);
      budgets.set(address, budget);
      const [oldest] = budgets.keys();
      if (budgets.size > MOST_ADDRESSES && oldest !== undefined) budgets.delete(oldest);
      return budget.take() === 0;
    },
  };
};
