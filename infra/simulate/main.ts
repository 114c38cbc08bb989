// Runs schedules of faults against the product's own core, in virtual time; the same seed is the same schedule.
//   node infra/simulate/main.ts --seeds 1000 [--from 1]
//   node infra/simulate/main.ts --seed 42            its plan and its trace
//   node infra/simulate/main.ts --defects            shows that each built-in defect is caught
import process from "node:process";
import { parseArguments } from "./arguments.ts";
import { catchDefects } from "./catch-defects.ts";
import { describePlan, FAULT_KINDS, type FaultKind } from "./plan.ts";
import { runSchedule, type ScheduleResult } from "./run-schedule.ts";

const sayViolations = ({ plan, violations }: ScheduleResult): void => {
  for (const line of describePlan(plan)) console.log(line);
  for (const { invariant, says } of violations) console.log(`  ${invariant} ${says}`);
};

const runSeeds = async (from: number, count: number): Promise<boolean> => {
  const struck = new Map<FaultKind, number>();
  const beganMs = performance.now();
  let [entries, faults, violations] = [0, 0, 0];
  for (let seed = from; seed < from + count; seed += 1) {
    const result = await runSchedule({ seed });
    entries += result.entryCount;
    faults += result.struck.length;
    violations += result.violations.length;
    for (const kind of result.struck) struck.set(kind, (struck.get(kind) ?? 0) + 1);
    if (result.violations.length > 0) sayViolations(result);
  }
  for (const kind of Object.keys(FAULT_KINDS) as FaultKind[])
    console.log(`${String(struck.get(kind) ?? 0).padStart(7)} ${kind}`);
  const seconds = ((performance.now() - beganMs) / 1000).toFixed(1);
  console.log(`seeds ${from} to ${from + count - 1}, ${entries} entries kept, ${seconds} s`);
  console.log(`${count} schedules, ${faults} faults, ${violations} violations`);
  return violations === 0;
};

const runSeed = async (seed: number): Promise<boolean> => {
  const result = await runSchedule({ seed, keepTrace: true });
  for (const line of result.trace) console.log(line);
  sayViolations(result);
  console.log(`trace ${result.traceHash}`);
  console.log(`1 schedules, ${result.struck.length} faults, ${result.violations.length} violations`);
  return result.violations.length === 0;
};

const runDefects = async (from: number, count: number): Promise<boolean> => {
  const hunts = await catchDefects(from, count, ({ defect, caught }) => {
    const how = caught
      ? `seed ${caught.seed}: ${caught.violation.invariant} ${caught.violation.says}`
      : `not caught in ${count} seeds`;
    console.log(`${caught ? "caught" : "MISSED"} ${defect.name} (${defect.says})\n       ${how}`);
  });
  const caught = hunts.filter((hunt) => hunt.caught !== undefined).length;
  console.log(`${caught} of ${hunts.length} defects caught`);
  return caught === hunts.length;
};

const asked = parseArguments(process.argv.slice(2));
if (!asked.ok) {
  console.log(asked.error);
  process.exitCode = 2;
} else {
  const { value } = asked;
  let passed: boolean;
  if (value.kind === "seed") passed = await runSeed(value.seed);
  else if (value.kind === "defects") passed = await runDefects(value.from, value.count);
  else passed = await runSeeds(value.from, value.count);
  process.exitCode = passed ? 0 : 1;
}
