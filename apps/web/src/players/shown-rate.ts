import type { RateRow, UsualRow } from "@courtloom/api";
import type { ShownRate, ShownUsual } from "../loom/rate-words.ts";

/** A count as the loom draws it; none has no interval. */
export const shownRate = ({ x, n, low, high }: Omit<RateRow, "tooFew">): ShownRate => ({
  x,
  n,
  low: low ?? undefined,
  high: high ?? undefined,
});

export const shownUsual = (usual: UsualRow | null): ShownUsual | undefined => usual ?? undefined;
