import { type ChildProcess, spawn } from "node:child_process";
import { appendFileSync, closeSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { logTail, openLog } from "@courtloom/db/embedded";
import { boundArgs, boundEnv } from "./bound-node.ts";
import type { ChildContext } from "./child.ts";
import type { ChildSpec } from "./child-spec.ts";

const INSIST_AFTER_MS = 5000;
const LINES_KEPT = 12;

export interface Ended {
  readonly code: number | null;
  readonly text: string;
  /** The end of what it complained of, else of what it wrote. */
  readonly lastLines: string;
  /** True if the terminal has them already. */
  readonly isShown: boolean;
}

export interface SpawnedChild {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
}

/** A process group of its own, so that Ctrl-C reaches only the supervisor, who ends things in order. */
export function spawnChild(spec: ChildSpec, context: ChildContext): SpawnedChild {
  const log = openLog(join(context.logDir, `${spec.name}.log`));
  const child = spawn(process.execPath, boundArgs(spec.args), {
    cwd: spec.cwd,
    env: boundEnv({ ...context.env(), ...spec.env }),
    stdio: ["ignore", log.fd, "pipe", "ipc"],
    detached: true,
  });
  closeSync(log.fd);
  child.on("message", context.onMessage);
  const lastLines: string[] = [];
  if (child.stderr) {
    createInterface({ input: child.stderr }).on("line", (line) => {
      lastLines.push(line);
      if (lastLines.length > LINES_KEPT) lastLines.shift();
      appendFileSync(log.path, `${line}\n`);
      context.tell(`${spec.name} | ${line}`);
    });
  }
  const ended = new Promise<Ended>((resolve) => {
    const finish = (code: number | null, text: string): void => {
      const isShown = lastLines.length > 0;
      resolve({ code, text, lastLines: isShown ? lastLines.join("\n") : logTail(log), isShown });
    };
    child.once("error", (error) => finish(1, error.message));
    child.once("exit", (code, signal) => finish(code, signal ?? `exit code ${code}`));
  });
  return { child, ended };
}

/** Ends a child and what it started: asks, and after 5 s insists. */
export async function endProcess(child: ChildProcess | undefined): Promise<void> {
  if (child?.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  signalGroup(child.pid, "SIGTERM");
  const insist = setTimeout(() => signalGroup(child.pid, "SIGKILL"), INSIST_AFTER_MS);
  await gone;
  clearTimeout(insist);
}

/** The child with whatever it started itself. */
function signalGroup(pid: number | undefined, signal: NodeJS.Signals): void {
  try {
    if (pid !== undefined) process.kill(-pid, signal);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ESRCH") throw error;
  }
}
