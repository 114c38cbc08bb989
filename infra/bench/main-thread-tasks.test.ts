import { describe, expect, it } from "vitest";
import { MARK } from "./drag-latencies.ts";
import { mainThreadTasks } from "./main-thread-tasks.ts";

const event = (name: string, ts: number, dur: number | undefined, more = {}) => ({
  ...{ name, ts, pid: 7, tid: 1 },
  ...(dur === undefined ? {} : { dur }),
  ...more,
});
const mark = event(MARK, 1_000, undefined);

describe("tasks on the main thread", () => {
  it("[BN10] are those of the marked page, from the mark on", () => {
    const tasks = mainThreadTasks([
      event("RunTask", 500, 9_000),
      event("RunTask", 2_000, 4_500),
      event("RunTask", 3_000, 8_000, { tid: 2 }),
      event("RunTask", 3_000, 8_000, { pid: 8 }),
      event("Layout", 3_000, 8_000),
      mark,
      event("RunTask", 9_000, 250),
    ]);
    expect(tasks).toEqual({ ok: true, value: [4.5, 0.25] });
  });

  it("[BN10] cannot be told without the mark, or of a trace without tasks", () => {
    expect(mainThreadTasks([event("RunTask", 2_000, 1)]).ok).toBe(false);
    expect(mainThreadTasks([mark]).ok).toBe(false);
  });
});
