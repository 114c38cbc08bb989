import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { until } from "../faults/product-run.ts";
import { type Child, createChild } from "./child.ts";

let folder: string;
let lines: string[];
let pids: (number | undefined)[];
let env: Record<string, string>;
let child: Child | undefined;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "courtloom-child-"));
  lines = [];
  pids = [];
  env = { WORD: "first" };
});
afterEach(async () => {
  await child?.stop();
  rmSync(folder, { recursive: true });
});

function create(script: string, endless: boolean): Child {
  writeFileSync(join(folder, "child.mjs"), script);
  child = createChild(
    { name: "part", args: [join(folder, "child.mjs")], cwd: folder, env: {}, port: undefined, endless },
    {
      instanceId: "ours",
      logDir: folder,
      env: () => env,
      tell: (line) => lines.push(line),
      onStarted: (_name, pid) => pids.push(pid),
      onMessage: (message) => lines.push(JSON.stringify(message)),
    },
  );
  return child;
}

const FOREVER = `
  import { writeFileSync } from "node:fs";
  writeFileSync("word", process.env.WORD);
  setInterval(() => undefined, 1000);`;
const word = (): string =>
  existsSync(join(folder, "word")) ? readFileSync(join(folder, "word"), "utf8") : "";

describe("createChild", { timeout: 60_000 }, () => {
  it("[ST9] starts it again when it is killed", async () => {
    const part = create(FOREVER, true);
    await until("it works", 20_000, () => word() === "first");
    process.kill(pids[0] ?? 0, "SIGKILL");
    await until("another one runs", 20_000, () => pids.length === 2 && part.isUp());
    expect(lines.join()).toContain("part ended (SIGKILL); starting it again in 0.2 s");
  });

  it("[ST9] shows on the terminal and in its log what it complained of", async () => {
    create(`console.error("the reason"); process.exitCode = 3;`, true);
    await until("it fell", 20_000, () => lines.some((line) => line.includes("exit code 3")));
    expect(lines).toContain("part | the reason");
    expect(readFileSync(join(folder, "part.log"), "utf8")).toContain("the reason");
  });

  it("[ST20] lets one that has done its work rest", async () => {
    const part = create(`process.exitCode = 0;`, false);
    await until("it has ended", 20_000, () => !part.isKept());
    expect(pids).toHaveLength(1);
  });

  it("[ST8] starts it anew with other settings", async () => {
    const part = create(FOREVER, false);
    await until("it works", 20_000, () => word() === "first");
    env = { WORD: "second" };
    part.restart();
    await until("it has the new ones", 20_000, () => word() === "second");
    expect(part.isKept()).toBe(true);
  });

  it("[ST16] ends one that does not want to, and does not start it again", async () => {
    const part = create(`process.on("SIGTERM", () => undefined); ${FOREVER}`, true);
    await until("it works", 20_000, () => word() === "first");
    await part.stop();
    expect(part.isUp()).toBe(false);
    expect(pids).toHaveLength(1);
  });
});
