import process from "node:process";
import { checkEnd } from "./check-end.ts";
import type { Defect } from "./defect.ts";
import { type FaultKind, type Plan, planOf } from "./plan.ts";
import { strike } from "./strike.ts";
import { createTrace } from "./trace.ts";
import { createVerdict, type Violation } from "./verdict.ts";
import { createVirtualTime } from "./virtual-time.ts";
import { createWorld, type World } from "./world.ts";

export interface ScheduleOptions {
  readonly seed: number;
  readonly defect?: Defect;
  /** Keep the trace's lines, not only its hash. */
  readonly keepTrace?: boolean;
}

export interface ScheduleResult {
  readonly plan: Plan;
  readonly violations: readonly Violation[];
  /** The same for the same seed, whatever the machine. */
  readonly traceHash: string;
  /** Empty unless it was asked for. */
  readonly trace: readonly string[];
  readonly struck: readonly FaultKind[];
  /** Entries on disk at the end, openings and the desk's included. */
  readonly entryCount: number;
}

/** After the faults have ended, so long may everything take to come right. */
export const DRAIN_MS = 15_000;

const heal = (world: World, ends: Set<() => void>): void => {
  world.trace.say("plan", "everything heals");
  for (const end of ends) end();
  ends.clear();
  world.database.recover();
  for (const node of world.nodes) {
    node.crashAtStep(0);
    node.start();
  }
  for (const phone of world.phones) {
    phone.rest();
    phone.start();
    for (const lane of phone.lanes()) lane.tryAgain();
  }
};

/** What nobody waits for must not fail either: the process that runs the product would say so or end. */
const catchingStrays = async (run: () => Promise<void>, stray: (error: unknown) => void): Promise<void> => {
  process.on("unhandledRejection", stray);
  process.on("uncaughtException", stray);
  try {
    await run();
  } finally {
    process.off("unhandledRejection", stray);
    process.off("uncaughtException", stray);
  }
};

/** Runs the schedule of one seed from its first connection to the last check. */
export const runSchedule = async (options: ScheduleOptions): Promise<ScheduleResult> => {
  const plan = planOf(options.seed);
  const time = createVirtualTime();
  const trace = createTrace(time.nowMs, options.keepTrace ?? false);
  const verdict = createVerdict(({ invariant, says }) => trace.say(invariant, says));
  const stray = (error: unknown): void =>
    verdict.broke("I8", `not caught: ${error instanceof Error ? error.message : error}`);
  let entryCount = 0;
  await catchingStrays(async () => {
    const world = createWorld({ plan, time, trace, verdict, defect: options.defect });
    const ends = new Set<() => void>();
    for (const fault of plan.faults) time.after(fault.atMs, () => strike(world, fault, ends));
    time.after(plan.healMs, () => heal(world, ends));
    await time.runUntil(plan.healMs + DRAIN_MS, stray);
    await checkEnd(world);
    entryCount = (await world.database.entryIds()).size;
  }, stray);
  trace.say("end", `${entryCount} entries`);
  return {
    plan,
    violations: verdict.violations(),
    traceHash: trace.hash(),
    trace: trace.lines(),
    struck: plan.faults.map(({ kind }) => kind),
    entryCount,
  };
};
