/** One bar: ours against its floor, measured in turns in the same run so that a noisy machine hurts both. */
export interface Comparison {
  readonly name: string;
  readonly floorName: string;
  readonly bar: number;
  readonly ours: () => void;
  readonly floor: () => void;
}

export interface Outcome {
  readonly name: string;
  readonly oursMs: number;
  readonly floorMs: number;
  readonly ratio: number;
  readonly bar: number;
  readonly passed: boolean;
}

const REPEATS = 15;
const WARM_UPS = 3;

const timed = (run: () => void): number => {
  const start = performance.now();
  run();
  return performance.now() - start;
};

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

/** Medians of fifteen turns each, after three to warm up, and the median of the turns' own ratios, which gates. */
export const compare = ({ name, floorName, bar, ours, floor }: Comparison): Outcome => {
  for (let i = 0; i < WARM_UPS; i += 1) {
    floor();
    ours();
  }
  const turns = Array.from({ length: REPEATS }, () => ({ floorMs: timed(floor), oursMs: timed(ours) }));
  const oursMs = median(turns.map((t) => t.oursMs));
  const floorMs = median(turns.map((t) => t.floorMs));
  const ratio = median(turns.map((t) => t.oursMs / t.floorMs));
  const passed = ratio <= bar;
  console.log(
    `${name}: ${oursMs.toFixed(2)} ms; ${floorName}: ${floorMs.toFixed(2)} ms; ratio ${ratio.toFixed(2)} (bar ${bar}) ${passed ? "kept" : "MISSED"}`,
  );
  return { name, oursMs, floorMs, ratio, bar, passed };
};
