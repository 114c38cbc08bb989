import type { ChildProcess } from "node:child_process";
import { setTimeout as pause } from "node:timers/promises";
import type { ChildContext } from "./child.ts";
import type { ChildSpec } from "./child-spec.ts";
import { askHealth, type Health } from "./health.ts";

const HEALTH_EVERY_MS = 100;
const FIRST_ANSWER_WITHIN_MS = 60_000;
const CHECK_EVERY_MS = 5000;
/** So many unanswered checks in a row and a child counts as stuck: after 25 to 40 s. */
const STUCK_AFTER = 5;

/** Asks until it is up, then now and then; one that stays silent is killed, and so started again. */
export async function watchHealth(
  spec: ChildSpec,
  context: ChildContext,
  child: ChildProcess,
  signal: AbortSignal,
  markUp: () => void,
): Promise<void> {
  const { port } = spec;
  if (port === undefined) return markUp();
  const ask = (): Promise<Health> => askHealth(port, context.instanceId);
  if (await becomesHealthy(ask, signal)) {
    markUp();
    await staysHealthy(ask, signal);
  }
  if (signal.aborted) return;
  context.tell(`${spec.name} does not answer; ending it`);
  child.kill("SIGKILL");
}

/** True when it is well; false when it was silent for too long, or nobody needs to know any more. */
async function becomesHealthy(ask: () => Promise<Health>, signal: AbortSignal): Promise<boolean> {
  let until = performance.now() + FIRST_ANSWER_WITHIN_MS;
  while (!signal.aborted && performance.now() < until) {
    const health = await ask();
    if (health === "well" && !signal.aborted) return true;
    if (health === "unwell") until = performance.now() + FIRST_ANSWER_WITHIN_MS;
    await wait(HEALTH_EVERY_MS, signal);
  }
  return false;
}

/** Returns when it has been silent for too long, or when nobody needs to know any more. */
async function staysHealthy(ask: () => Promise<Health>, signal: AbortSignal): Promise<void> {
  let silent = 0;
  while (!signal.aborted && silent < STUCK_AFTER) {
    await wait(CHECK_EVERY_MS, signal);
    silent = (await ask()) === "silent" ? silent + 1 : 0;
  }
}

async function wait(ms: number, signal: AbortSignal): Promise<void> {
  try {
    await pause(ms, undefined, { signal });
  } catch (error) {
    if (!signal.aborted) throw error;
  }
}
