import { wilson } from "@courtloom/stats";
import type { SummedCount } from "../tally/tally-count.ts";

/** x of n with its Wilson interval, 95 %, in [0, 1]; both ends null at n = 0. */
export interface RateRow extends SummedCount {
  readonly low: number | null;
  readonly high: number | null;
  /** Under five: the count alone is shown. */
  readonly tooFew: boolean;
}

/** Under so many attempts a rate says too little to be shown. */
const ENOUGH = 5;

export const rateRow = ({ x, n }: SummedCount): RateRow => {
  const interval = wilson(x, n);
  return { x, n, low: interval?.low ?? null, high: interval?.high ?? null, tooFew: n < ENOUGH };
};
