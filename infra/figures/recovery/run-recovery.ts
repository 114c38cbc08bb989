import { type Bar, signed } from "../bar.ts";
import type { RunTasks } from "../run-tasks.ts";
import { ESTIMATOR_WORDS } from "./estimator-words.ts";
import type { AcademyOutcome, Estimator, Recovered } from "./recover-academy.ts";

/** How near a way of saying what choices are worth comes, in points won of a hundred choices. */
export interface Nearness {
  /** Root of the mean squared error. */
  readonly rmse: number;
  /** Mean error over players at least one spread above the academy. */
  readonly strongBias: number;
  /** Share of 90 % intervals that hold the truth, and their mean width; 0 where there are none. */
  readonly coverage: number;
  readonly width: number;
}

export interface RecoveryFigures {
  readonly nearness: Readonly<Record<Estimator, Nearness>>;
  readonly pointsLostCoverage: number;
  readonly bars: readonly Bar[];
}

/** One figure of an estimator: what it was found to be before the fit was built, and how far it may be from that. */
type Wanted = readonly [of: Estimator, figure: keyof Nearness, wanted: number, within: number];

/** SPEC OP8. */
const WANTED: readonly Wanted[] = [
  ["raw", "rmse", 13.5, 0.5],
  ["academy", "rmse", 6.2, 0.3],
  ["set", "rmse", 5.2, 0.3],
  ["set", "strongBias", 0.2, 0.5],
  ["set", "coverage", 89.1, 1.5],
  ["set", "width", 16.7, 0.5],
  ["halved", "rmse", 5.6, 0.3],
  ["halved", "coverage", 59.3, 3],
  ["halved", "width", 9.4, 0.5],
  ["doubled", "rmse", 6.2, 0.3],
  ["doubled", "coverage", 95.5, 1.5],
  ["doubled", "width", 25.6, 0.75],
];

const FIGURES: Readonly<Record<keyof Nearness, string>> = {
  rmse: "root mean squared error",
  strongBias: "bias of strong players",
  coverage: "coverage of 90 % intervals",
  width: "width of 90 % intervals",
};

const nearnessOf = (parts: readonly Recovered[]): Nearness => {
  const sum = (of: keyof Recovered): number => parts.reduce((total, part) => total + part[of], 0);
  return {
    rmse: 100 * Math.sqrt(sum("squares") / sum("count")),
    strongBias: (100 * sum("strongError")) / sum("strongCount"),
    coverage: (100 * sum("covered")) / sum("count"),
    width: (100 * sum("widths")) / sum("count"),
  };
};

const barsOf = (nearness: RecoveryFigures["nearness"]): readonly Bar[] => [
  ...WANTED.map(([of, figure, wanted, points]): Bar => {
    const found = nearness[of][figure];
    return {
      kept: Math.abs(found - wanted) <= points,
      says: `${ESTIMATOR_WORDS[of]}: ${FIGURES[figure]} ${found.toFixed(1)}, within ${points} of ${wanted} (${signed(found - wanted)})`,
    };
  }),
  ...(["raw", "academy"] as const).map((other): Bar => {
    const [ours, theirs] = [nearness.set.rmse, nearness[other].rmse];
    return {
      kept: ours < theirs,
      says: `${ESTIMATOR_WORDS.set}: nearer than ${ESTIMATOR_WORDS[other]} (${ours.toFixed(1)} against ${theirs.toFixed(1)})`,
    };
  }),
];

const summarise = (outcomes: readonly AcademyOutcome[]): RecoveryFigures => {
  const of = (estimator: Estimator): Nearness => nearnessOf(outcomes.map(({ worths }) => worths[estimator]));
  const nearness = {
    raw: of("raw"),
    academy: of("academy"),
    set: of("set"),
    halved: of("halved"),
    doubled: of("doubled"),
    fitted: of("fitted"),
  };
  const total = (part: "count" | "covered"): number =>
    outcomes.reduce((sum, { pointsLost }) => sum + pointsLost[part], 0);
  return {
    nearness,
    pointsLostCoverage: (100 * total("covered")) / total("count"),
    bars: barsOf(nearness),
  };
};

/** Simulates academies whose worths are known and fits them; the same seed gives the same figures. SPEC OP7, OP8. */
export const runRecovery = async (
  { seed, academies }: { readonly seed: number; readonly academies: number },
  run: RunTasks,
): Promise<RecoveryFigures> => {
  const tasks = Array.from(
    { length: academies },
    (_, academy) => ({ kind: "academy", seed, academy }) as const,
  );
  return summarise(await run<"academy">(tasks, "academies"));
};
