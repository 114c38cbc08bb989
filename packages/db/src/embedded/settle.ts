import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { err, ok, type Result } from "@courtloom/core";
import type { EmbeddedError } from "./embedded-error.ts";
import { type Running, readPostmasterPid } from "./launch.ts";
import { answers } from "./probe.ts";
import { isRunning, servesFolder, worksIn } from "./process-facts.ts";
import type { Remembered } from "./remembered.ts";

const ANSWER_WITHIN_MS = 60_000;
const LEFTOVERS_WITHIN_MS = 5000;
const WATCH_EVERY_MS = 250;

/**
 * Finds out what an earlier run left in the cluster: a server that still serves it is adopted; a
 * `postmaster.pid` whose process id now belongs to something else is removed, because Postgres would take
 * that for a running server. `undefined` when a server may be started.
 */
export async function settle(
  cluster: string,
  remembered: Remembered,
): Promise<Result<Running | undefined, EmbeddedError>> {
  const left = readPostmasterPid(cluster);
  if (left === undefined) return ok(undefined);
  if (servesFolder(left.pid, cluster)) return awaitAnswer(cluster, left.pid, remembered);
  // Workers notice the death of their server within moments; the folder is theirs until they have ended.
  await until(LEFTOVERS_WITHIN_MS, () => !hasWorkers(cluster));
  if (!hasWorkers(cluster) && readPostmasterPid(cluster)?.pid === left.pid) {
    rmSync(join(cluster, "postmaster.pid"), { force: true });
  }
  return ok(undefined);
}

async function awaitAnswer(
  cluster: string,
  pid: number,
  remembered: Remembered,
): Promise<Result<Running | undefined, EmbeddedError>> {
  let port: number | undefined;
  await until(ANSWER_WITHIN_MS, async () => {
    if (!isRunning(pid)) return true;
    const now = readPostmasterPid(cluster);
    if (now?.port === undefined || !now.ready) return false;
    if (!(await answers({ ...remembered, port: now.port }))) return false;
    port = now.port;
    return true;
  });
  if (port !== undefined) return ok({ pid, port, exited: watch(pid) });
  if (!isRunning(pid)) return ok(undefined);
  const detail = `process ${pid} serves ${cluster} but does not answer; end it with: kill -INT ${pid}`;
  return err({ code: "start-failed", detail });
}

/** Resolves when a process that is not our child has ended. */
async function watch(pid: number): Promise<void> {
  while (isRunning(pid)) await pause(WATCH_EVERY_MS, undefined, { ref: false });
}

/** True if any process works in the folder, as every Postgres process does; known on Linux only. */
function hasWorkers(cluster: string): boolean {
  if (process.platform !== "linux") return false;
  return readdirSync("/proc").some((name) => /^\d+$/.test(name) && worksIn(Number(name), cluster));
}

async function until(withinMs: number, holds: () => boolean | Promise<boolean>): Promise<void> {
  const end = performance.now() + withinMs;
  while (!(await holds()) && performance.now() < end) await pause(50);
}
