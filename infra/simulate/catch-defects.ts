import type { Defect } from "./defect.ts";
import { ALL_DEFECTS } from "./defects/all-defects.ts";
import { runSchedule } from "./run-schedule.ts";
import type { Violation } from "./verdict.ts";

export interface Hunt {
  readonly defect: Defect;
  /** Where it was caught first; undefined: in none of the seeds. */
  readonly caught: { readonly seed: number; readonly violation: Violation } | undefined;
}

/** Runs seeds with the defect built in until one shows it that shows nothing without the defect. */
const hunt = async (defect: Defect, from: number, count: number): Promise<Hunt> => {
  for (let seed = from; seed < from + count; seed += 1) {
    const [violation] = (await runSchedule({ seed, defect })).violations;
    if (violation === undefined) continue;
    const sound = await runSchedule({ seed });
    if (sound.violations.length === 0) return { defect, caught: { seed, violation } };
  }
  return { defect, caught: undefined };
};

/** Hunts every defect through the seeds `from`, `from + 1` …, at most `count` of them. */
export const catchDefects = async (
  from: number,
  count: number,
  told: (hunt: Hunt) => void = () => undefined,
): Promise<readonly Hunt[]> => {
  const hunts: Hunt[] = [];
  for (const defect of ALL_DEFECTS) {
    const done = await hunt(defect, from, count);
    hunts.push(done);
    told(done);
  }
  return hunts;
};
