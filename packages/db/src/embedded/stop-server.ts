import { setTimeout as pause } from "node:timers/promises";
import { isRunning } from "./process-facts.ts";

/** How to ask a Postgres to end, from polite to rude, and how long to wait for each. */
const STEPS = [
  ["SIGINT", 15_000],
  ["SIGQUIT", 5000],
  ["SIGKILL", 2000],
] as const;

/** Ends the server and waits for it: open transactions are undone, committed ones are safe in every case. */
export async function stopServer(pid: number): Promise<void> {
  for (const [signal, waitMs] of STEPS) {
    if (!isRunning(pid) || !send(pid, signal)) return;
    const until = performance.now() + waitMs;
    while (isRunning(pid) && performance.now() < until) await pause(20);
  }
}

function send(pid: number, signal: NodeJS.Signals): boolean {
  try {
    return process.kill(pid, signal);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ESRCH") return false;
    throw error;
  }
}
