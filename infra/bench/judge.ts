import type { Verdict } from "./outcome.ts";
import { median } from "./quantile.ts";

/** One repeat: ours and the floor, measured right after each other, in the same unit. */
export interface Turn {
  readonly ours: number;
  readonly floor: number;
}

export interface Judged {
  /** Median of the turns' own ratios; `NaN` of no turns. */
  readonly ratio: number;
  /** The largest floor of any turn by the smallest, 1 or more; `NaN` of no turns. */
  readonly spread: number;
  readonly verdict: Exclude<Verdict, "impossible">;
}

/** A floor that differs more than this between turns says that the machine was busy with something else. */
export const LARGEST_SPREAD = 1.5;

/**
 * Ours against the floor. Without a bar nothing is judged. Noise goes before the bar: a lucky ratio on a busy
 * machine is no better than an unlucky one. Turns without a figure miss the bar. Spec BN2, BN3.
 */
export const judge = (turns: readonly Turn[], bar: number | undefined): Judged => {
  const ratio = median(turns.map(({ ours, floor }) => ours / floor));
  const floors = turns.map(({ floor }) => floor);
  const spread = floors.length === 0 ? Number.NaN : Math.max(...floors) / Math.min(...floors);
  if (bar === undefined) return { ratio, spread, verdict: "printed" };
  if (spread > LARGEST_SPREAD) return { ratio, spread, verdict: "noisy" };
  return { ratio, spread, verdict: ratio <= bar ? "kept" : "missed" };
};
