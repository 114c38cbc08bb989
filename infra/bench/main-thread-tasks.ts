import { err, ok, type Result } from "@courtloom/core";
import { MARK } from "./drag-latencies.ts";

/** What is read of Chromium's trace for tasks; times in microseconds. */
export interface TaskEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid?: number;
  readonly ts: number;
  readonly dur?: number;
}

const RUN_TASK = "RunTask";

/**
 * How long each task on the main thread of the page with the mark took, in ms, from the mark on. The error is
 * for people. Spec BN10.
 */
export const mainThreadTasks = (trace: readonly TaskEvent[]): Result<readonly number[], string> => {
  const mark = trace.find(({ name }) => name === MARK);
  if (!mark) return err("The trace does not hold the page's mark.");
  const tasks = trace.filter(
    ({ name, pid, tid, ts, dur }) =>
      name === RUN_TASK && pid === mark.pid && tid === mark.tid && ts >= mark.ts && dur !== undefined,
  );
  return tasks.length === 0
    ? err("The trace holds no task of the page.")
    : ok(tasks.map(({ dur = 0 }) => dur / 1000));
};
