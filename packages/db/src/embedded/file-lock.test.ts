import { fork } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { acquireLock, parseLock, waitForLock } from "./file-lock.ts";

let folder: string;
let path: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "courtloom-lock-"));
  path = join(folder, "it.lock");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A lock left by a process; by default one that never was. */
function leave(content: Partial<{ pid: number; startMark: string; token: string; note: string }>): void {
  writeFileSync(path, JSON.stringify({ pid: 999_999_999, startMark: "x", token: "t", note: "", ...content }));
}

describe("acquireLock", () => {
  it("[ST3] is held by one, whose note the next one reads", async () => {
    const first = await acquireLock(path, "http://localhost:3000");
    expect(first.ok).toBe(true);
    expect(await acquireLock(path)).toEqual({
      ok: false,
      error: { pid: process.pid, note: "http://localhost:3000" },
    });
  });

  it("[ST3] is free again after its release, also after two", async () => {
    const first = await acquireLock(path);
    if (!first.ok) throw new Error("not free");
    first.value.release();
    first.value.release();
    expect(readdirSync(folder)).toEqual([]);
    expect((await acquireLock(path)).ok).toBe(true);
  });

  it("[ST3] is taken over from a process that ended", async () => {
    leave({});
    expect((await acquireLock(path)).ok).toBe(true);
    expect(parseLock(readFileSync(path, "utf8"))?.pid).toBe(process.pid);
  });

  it("[ST3] is taken over when another process got the id", async () => {
    leave({ pid: process.pid, startMark: "an earlier process" });
    expect((await acquireLock(path)).ok).toBe(true);
  });

  it.each(["", "{", "null", '{"pid":"1"}'])(
    "[ST3] is taken over when the file is damaged: %j",
    async (text) => {
      writeFileSync(path, text);
      expect((await acquireLock(path)).ok).toBe(true);
    },
  );

  it("[ST3] of many that find a dead lock, one gets it", async () => {
    leave({});
    const all = await Promise.all(Array.from({ length: 12 }, () => acquireLock(path)));
    expect(all.filter((taken) => taken.ok)).toHaveLength(1);
    expect(readdirSync(folder)).toEqual(["it.lock"]);
  });

  it("[ST3] of several processes that find a dead lock, one gets it", { timeout: 30_000 }, async () => {
    leave({});
    const script = join(folder, "take.mjs");
    const lock = new URL("./file-lock.ts", import.meta.url).href;
    writeFileSync(
      script,
      `import { acquireLock } from ${JSON.stringify(lock)};
       process.once("message", async () => process.send((await acquireLock(${JSON.stringify(path)})).ok));
       setInterval(() => undefined, 1000);
       process.send("ready");`,
    );
    const children = Array.from({ length: 5 }, () => fork(script));
    await Promise.all(children.map((child) => once(child, "message")));
    const answers = children.map((child) => once(child, "message"));
    for (const child of children) child.send("go");
    const got = (await Promise.all(answers)).map(([value]) => value);
    for (const child of children) child.kill();
    expect(got.filter((value) => value === true)).toHaveLength(1);
  });

  it("[ST3] does not remove another's lock on a late release", async () => {
    const first = await acquireLock(path);
    if (!first.ok) throw new Error("not free");
    leave({ pid: process.pid });
    first.value.release();
    expect(readdirSync(folder)).toEqual(["it.lock"]);
  });
});

describe("waitForLock", () => {
  it("[ST3] gets the lock when the holder gives it up, and gives up in time otherwise", async () => {
    const first = await acquireLock(path);
    if (!first.ok) throw new Error("not free");
    expect((await waitForLock(path, 0)).ok).toBe(false);
    const second = waitForLock(path, 10_000);
    first.value.release();
    expect((await second).ok).toBe(true);
  });
});
