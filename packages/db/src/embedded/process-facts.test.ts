import { spawn } from "node:child_process";
import { once } from "node:events";
import { describe, expect, it } from "vitest";
import { isRunning, parseProcStat, processFacts } from "./process-facts.ts";

describe("process facts", () => {
  it("[ST3] finds state and start after a name with brackets and blanks", () => {
    const after = "S 1 10 10 0 -1 4194560 1 2 3 4 5 6 7 8 20 0 1 0 998877 0 0";
    expect(parseProcStat(`10 (a) b) (c) ${after}`)).toEqual({ state: "S", startTicks: "998877" });
    expect(parseProcStat("10 (short) S 1")).toBeUndefined();
  });

  it("[ST3] knows this process, always with the same mark", () => {
    const [first, second] = [processFacts(process.pid), processFacts(process.pid)];
    expect(first).toMatchObject({ zombie: false });
    expect(first?.startMark).toBe(second?.startMark);
    expect(first?.startMark).not.toBe("");
  });

  it("[ST3] counts a process as gone once it has ended", async () => {
    const child = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"]);
    await once(child, "spawn");
    expect(isRunning(child.pid ?? 0)).toBe(true);
    child.kill("SIGKILL");
    await once(child, "exit");
    expect(isRunning(child.pid ?? 0)).toBe(false);
  });
});
