import { spawn } from "node:child_process";
import { closeSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { err, ok, type Result } from "@courtloom/core";
import type { Place } from "./choose-place.ts";
import type { EmbeddedError } from "./embedded-error.ts";
import { logTail, openLog } from "./log-tail.ts";
import { type PostmasterPid, parsePostmasterPid } from "./postmaster-pid.ts";
import { POSTGRES_ENV, type RunAs } from "./run-command.ts";

export interface Running {
  readonly pid: number;
  readonly port: number;
  /** Resolves when the server process has ended, for whatever reason. */
  readonly exited: Promise<void>;
}

/** Recovery after a crash replays the log first; that is short here, but a slow disk may need a while. */
const READY_WITHIN_MS = 60_000;

export function readPostmasterPid(cluster: string): PostmasterPid | undefined {
  try {
    return parsePostmasterPid(readFileSync(join(cluster, "postmaster.pid"), "utf8"));
  } catch {
    // No file: no server was left running.
    return undefined;
  }
}

/**
 * Starts the server and waits until it takes connections. It gets a process group of its own, so that
 * Ctrl-C in a terminal reaches only us, and writes to a file, so that it outlives us without harm.
 */
export async function launch(
  place: Place,
  port: number,
  runAs: RunAs | undefined,
  durable: boolean,
): Promise<Result<Running, EmbeddedError>> {
  const log = openLog(join(place.home, "postgres.log"));
  const args = ["-D", place.cluster, ...settings(port, durable)];
  const stdio: ("ignore" | number)[] = ["ignore", log.fd, log.fd];
  const child = spawn(place.binaries.postgres, args, {
    ...runAs,
    stdio,
    detached: true,
    cwd: "/",
    env: POSTGRES_ENV,
  });
  closeSync(log.fd);
  const end: { reason: string | undefined } = { reason: undefined };
  const exited = new Promise<void>((resolve) => {
    const finish = (reason: string): void => {
      end.reason ??= reason;
      resolve();
    };
    child.once("error", (error) => finish(error.message));
    child.once("exit", (code, signal) => finish(`ended with ${signal ?? code}`));
  });
  const until = performance.now() + READY_WITHIN_MS;
  while (end.reason === undefined && performance.now() < until) {
    const written = readPostmasterPid(place.cluster);
    if (child.pid !== undefined && written?.pid === child.pid && written.ready) {
      child.unref();
      return ok({ pid: child.pid, port, exited });
    }
    await pause(20);
  }
  if (end.reason === undefined) child.kill("SIGQUIT");
  const detail = `${logTail(log)}\n(${end.reason ?? `not ready after ${READY_WITHIN_MS / 1000} s`}; whole log: ${log.path})`;
  return err({ code: "start-failed", detail });
}

function settings(port: number, durable: boolean): string[] {
  const safe = durable ? "on" : "off";
  const values = {
    port: String(port),
    listen_addresses: "127.0.0.1",
    unix_socket_directories: "",
    fsync: safe,
    synchronous_commit: safe,
    full_page_writes: safe,
    timezone: "UTC",
    log_timezone: "UTC",
  };
  return Object.entries(values).flatMap(([name, value]) => ["-c", `${name}=${value}`]);
}
