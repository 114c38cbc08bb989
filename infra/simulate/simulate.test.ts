import { describe, expect, it } from "vitest";
import { parseArguments } from "./arguments.ts";
import { catchDefects } from "./catch-defects.ts";
import type { Defect } from "./defect.ts";
import { createLooseLog } from "./defects/loose-log.ts";
import { describePlan, FAULT_KINDS, planOf } from "./plan.ts";
import { runSchedule, type ScheduleResult } from "./run-schedule.ts";

const FROM = 5_000;
const COUNT = 60;
/** A defect may need a rare meeting of faults. */
const HUNTED = 200;
const seeds = (from: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + i);

const said = ({ plan, violations }: ScheduleResult): string =>
  [...describePlan(plan), ...violations.map(({ invariant, says }) => `${invariant} ${says}`)].join("\n");

/** What was broken in a run of seeds, with each plan; empty when nothing was. */
const broken = async (from: number, count: number, defect?: Defect): Promise<readonly string[]> => {
  const found: string[] = [];
  for (const seed of seeds(from, count)) {
    const result = await runSchedule(defect ? { seed, defect } : { seed });
    if (result.violations.length > 0) found.push(said(result));
  }
  return found;
};

describe("a simulated schedule", () => {
  it("[SM1] is the same every time for one seed, and another for another", async () => {
    for (const seed of [17, 5_004]) {
      const [first, again] = [await runSchedule({ seed, keepTrace: true }), await runSchedule({ seed })];
      expect(again.traceHash).toBe(first.traceHash);
      expect(first.trace.length).toBeGreaterThan(20);
    }
    const [one, other] = [await runSchedule({ seed: 17 }), await runSchedule({ seed: 18 })];
    expect(one.traceHash).not.toBe(other.traceHash);
  });

  it("[SM2] is planned before it runs, and every kind of fault comes up", () => {
    const kinds = new Set(seeds(FROM, COUNT).flatMap((seed) => planOf(seed).faults.map(({ kind }) => kind)));
    expect([...kinds].toSorted()).toEqual(Object.keys(FAULT_KINDS).toSorted());
    expect(describePlan(planOf(7))).toEqual(describePlan(planOf(7)));
  });

  it(`[SM3, SM4] keeps every invariant in seeds ${FROM} to ${FROM + COUNT - 1}`, async () => {
    console.log(`seeds ${FROM} to ${FROM + COUNT - 1}`);
    expect(await broken(FROM, COUNT)).toEqual([]);
  }, 60_000);
});

describe("what a schedule found once", () => {
  it("[SM3] a staff board names the lead though only a phone that it keeps out has asked since", async () => {
    expect(await broken(20_390, 1)).toEqual([]);
  });

  it("[SM3, SY41, SY42] lanes that waited for ever after an older backup came back", async () => {
    expect(await broken(266, 1)).toEqual([]);
  });

  it("[SM4, SY40] a lane with a hole where its phone's storage had been full", async () => {
    expect([...(await broken(96, 1)), ...(await broken(214, 1))]).toEqual([]);
  });
});

describe("the simulator itself", () => {
  it("[SM6] catches every defect that is built in", async () => {
    const hunts = await catchDefects(FROM, HUNTED);
    for (const { defect, caught } of hunts) console.log(`${defect.name}: seed ${caught?.seed ?? "none"}`);
    expect(hunts.filter(({ caught }) => caught === undefined).map(({ defect }) => defect.name)).toEqual([]);
    expect(hunts.length).toBeGreaterThanOrEqual(12);
  }, 120_000);

  it("[SM6] does not take the log that defects are built into for one", async () => {
    const sound: Defect = {
      name: "none",
      says: "a loose log that breaks no rule",
      database: (store, lab) => createLooseLog(store, {}, lab),
    };
    expect(await broken(FROM, 20, sound)).toEqual([]);
  }, 60_000);

  it("[SM5] says what to write when the command line cannot be read", () => {
    expect(parseArguments([])).toEqual({ ok: true, value: { kind: "seeds", from: 1, count: 1_000 } });
    expect(parseArguments(["--seed", "42"])).toEqual({ ok: true, value: { kind: "seed", seed: 42 } });
    expect(parseArguments(["--defects"])).toEqual({
      ok: true,
      value: { kind: "defects", from: 1, count: 200 },
    });
    for (const wrong of [
      ["--seeds", "many"],
      ["--seeds", "0"],
      ["--seed", "1.5"],
      ["--sed", "1"],
    ])
      expect(parseArguments(wrong)).toMatchObject({
        ok: false,
        error: expect.stringContaining("--seeds 1000"),
      });
  });
});
