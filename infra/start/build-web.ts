import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { err, ok, type Result } from "@courtloom/core";
import { waitForLock } from "@courtloom/db/embedded";
import { buildHash } from "./build-hash.ts";
import { runScript } from "./run-script.ts";
import { type Say, step } from "./say.ts";

const OTHER_BUILD_MS = 600_000;

/** Next's own program, run by Node directly: a wrapper in between would outlive its end. */
export function nextProgram(root: string): string {
  return createRequire(join(root, "apps", "web", "package.json")).resolve("next/dist/bin/next");
}

/** Builds the screens if anything they are made of changed since the last build. The error is for people. */
export async function buildWeb(
  root: string,
  env: Readonly<Record<string, string>>,
  tell: Say,
): Promise<Result<void, string>> {
  // The screens' own configuration takes another folder from COURTLOOM_DIST, so that builds can stand side by side.
  const dist = join(root, "apps", "web", env.COURTLOOM_DIST || ".next");
  if (isBuilt(dist, root)) return ok(undefined);
  mkdirSync(join(root, ".tmp"), { recursive: true });
  const lock = await waitForLock(join(root, ".tmp", "web-build.lock"), OTHER_BUILD_MS);
  if (!lock.ok)
    return err(`Another process (${lock.error.pid}) has been building the screens for ten minutes.`);
  try {
    return isBuilt(dist, root) ? ok(undefined) : await build(dist, root, env, tell);
  } finally {
    lock.value.release();
  }
}

const stampIn = (dist: string): string => join(dist, "courtloom-build");
const isWhole = (dist: string): boolean => existsSync(join(dist, "BUILD_ID"));

function isBuilt(dist: string, root: string): boolean {
  try {
    return isWhole(dist) && readFileSync(stampIn(dist), "utf8") === buildHash(root);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return false;
    throw error;
  }
}

/** The stamp goes first and comes back last: a build cut off half way does not count. */
async function build(
  dist: string,
  root: string,
  env: Readonly<Record<string, string>>,
  tell: Say,
): Promise<Result<void, string>> {
  const hash = buildHash(root);
  rmSync(stampIn(dist), { force: true });
  const end = await step("Building the screens (only after a change, about half a minute)", tell, () =>
    runScript([nextProgram(root), "build"], join(root, "apps", "web"), {
      ...env,
      NODE_ENV: "production",
      NEXT_TELEMETRY_DISABLED: "1",
    }),
  );
  if (end.exitCode !== 0 || !isWhole(dist))
    return err(`${end.output}\n\nThe screens could not be built; the reason is above.`);
  writeFileSync(stampIn(dist), hash);
  return ok(undefined);
}
