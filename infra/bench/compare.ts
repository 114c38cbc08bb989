import { judge } from "./judge.ts";
import type { Outcome } from "./outcome.ts";
import { median } from "./quantile.ts";

/** One bar: ours against its floor, measured in turns in the same run so that a noisy machine hurts both. */
export interface Comparison {
  readonly name: string;
  readonly floorName: string;
  readonly bar: number;
  readonly ours: () => void;
  readonly floor: () => void;
}

const REPEATS = 15;
const WARM_UPS = 3;

const timed = (run: () => void): number => {
  const start = performance.now();
  run();
  return performance.now() - start;
};

/** Medians of fifteen turns each, after three to warm up, and the median of the turns' own ratios, which gates. */
export const compare = ({ name, floorName, bar, ours, floor }: Comparison): Outcome => {
  for (let i = 0; i < WARM_UPS; i += 1) {
    floor();
    ours();
  }
  const turns = Array.from({ length: REPEATS }, () => ({ floor: timed(floor), ours: timed(ours) }));
  const oursMs = median(turns.map((turn) => turn.ours));
  const floorMs = median(turns.map((turn) => turn.floor));
  const { ratio } = judge(turns, undefined);
  const isKept = ratio <= bar;
  console.log(
    `${name}: ${oursMs.toFixed(2)} ms; ${floorName}: ${floorMs.toFixed(2)} ms; ratio ${ratio.toFixed(2)} (bar ${bar}) ${isKept ? "kept" : "MISSED"}`,
  );
  return { name, verdict: isKept ? "kept" : "missed" };
};
