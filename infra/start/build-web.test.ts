import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { buildWeb } from "./build-web.ts";

/** In the place of Next's program: counts its runs, and does what `mode` says. */
const PROGRAM = `
  const { appendFileSync, mkdirSync, readFileSync, writeFileSync } = require("node:fs");
  appendFileSync("../../runs", "x");
  const mode = readFileSync("../../mode", "utf8");
  mkdirSync(".next", { recursive: true });
  if (mode !== "cut off") writeFileSync(".next/BUILD_ID", "1");
  console.log("what it said");
  process.exit(mode === "fails" ? 3 : 0);`;

let root: string;
const write = (path: string, text: string): void => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
};
const build = () => buildWeb(root, { PATH: "/usr/bin:/bin" }, () => undefined);
const runs = (): number => readFileSync(join(root, "runs"), "utf8").length;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "courtloom-build-"));
  write("package-lock.json", "{}");
  write("tsconfig.base.json", "{}");
  write("packages/core/src/index.ts", "");
  write("apps/web/package.json", "{}");
  write("mode", "works");
  write("node_modules/next/dist/bin/next", PROGRAM);
  write("node_modules/next/package.json", "{}");
});
afterEach(() => rmSync(root, { recursive: true }));

describe("buildWeb", () => {
  it("[ST15] builds what changed, and nothing twice", async () => {
    expect(await build()).toEqual({ ok: true, value: undefined });
    expect(await build()).toEqual({ ok: true, value: undefined });
    expect(runs()).toBe(1);
    write("packages/core/src/index.ts", "changed");
    expect((await build()).ok).toBe(true);
    expect(runs()).toBe(2);
    rmSync(join(root, "apps/web/.next"), { recursive: true });
    expect((await build()).ok).toBe(true);
    expect(runs()).toBe(3);
  });

  it("[ST15] passes on what a failed build said, and does not count it", async () => {
    write("mode", "fails");
    expect(await build()).toMatchObject({ ok: false, error: expect.stringContaining("what it said") });
    write("mode", "works");
    expect((await build()).ok).toBe(true);
    expect(runs()).toBe(2);
  });

  it("[ST15] does not count a build that was cut off, also with exit code 0", async () => {
    write("mode", "cut off");
    expect((await build()).ok).toBe(false);
  });
});
