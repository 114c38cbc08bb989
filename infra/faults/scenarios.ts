import { request } from "node:http";
import { setTimeout as pause } from "node:timers/promises";
import { isPortFree, isRunning } from "@courtloom/db/embedded";
import {
  begin,
  beginAndWait,
  inDatabase,
  kill9,
  type ProductRun,
  pageAnswers,
  processes,
  type Site,
  until,
} from "./product-run.ts";

/** A fault, and what has to hold after it. Gets the running product and leaves it running. */
export interface Scenario {
  readonly name: string;
  readonly run: (site: Site, current: ProductRun) => Promise<ProductRun>;
}

/** Generous, for a machine that is busy with other things; usually a second or two. */
const BACK_WITHIN_MS = 30_000;

async function killPart(site: Site, current: ProductRun, part: "web" | "live"): Promise<ProductRun> {
  const before = processes(site)[part];
  kill9(before);
  await until(`another ${part} runs`, BACK_WITHIN_MS, () => processes(site)[part] !== before);
  await until("everything answers", BACK_WITHIN_MS, () => answersAll(site));
  return current;
}

/** Page by http, and the live part by a WebSocket through the same port. */
export async function answersAll(site: Site): Promise<boolean> {
  return (await pageAnswers(site)) && (await socketReaches(site));
}

/**
 * True if an upgrade reaches the live part: it takes it, or refuses this visitor, who has no session, by
 * itself. The front door's own answer while that part is down is 503.
 */
function socketReaches(site: Site): Promise<boolean> {
  const headers = {
    connection: "Upgrade",
    upgrade: "websocket",
    "sec-websocket-version": "13",
    "sec-websocket-key": Buffer.alloc(16, 1).toString("base64"),
  };
  const path = "/rt?EIO=4&transport=websocket";
  return new Promise((resolve) => {
    const asked = request({ host: "127.0.0.1", port: site.port, path, headers, timeout: 5000 });
    asked.once("upgrade", (_response, socket) => {
      socket.destroy();
      resolve(true);
    });
    asked.once("response", (response) => {
      response.resume();
      resolve((response.statusCode ?? 500) < 500);
    });
    asked.once("timeout", () => asked.destroy());
    asked.once("error", () => resolve(false));
    asked.end();
  });
}

async function killDatabase(site: Site, current: ProductRun): Promise<ProductRun> {
  const before = processes(site).database;
  kill9(before);
  await until("another database server runs", BACK_WITHIN_MS, async () => {
    try {
      return (
        processes(site).database !== before && (await inDatabase(site, (sql) => sql`select 1`)).length === 1
      );
    } catch {
      return false;
    }
  });
  return current;
}

async function killSupervisor(site: Site, current: ProductRun): Promise<ProductRun> {
  const before = processes(site);
  kill9(before.supervisor);
  await current.ended;
  await until("its children are gone", BACK_WITHIN_MS, () => !isAny(before, ["web", "live"]));
  return beginAndWait(site);
}

async function killEverything(site: Site, current: ProductRun): Promise<ProductRun> {
  const before = processes(site);
  for (const part of ["supervisor", "web", "live", "database"]) kill9(before[part]);
  await current.ended;
  return beginAndWait(site);
}

async function startTwiceAtOnce(site: Site, current: ProductRun): Promise<ProductRun> {
  await stopAndCheck(site, current);
  const both = [begin(site), begin(site)];
  const codes = await Promise.race([
    Promise.any(both.map((run) => run.ended)),
    pause(60_000, "neither gave way" as const, { ref: false }),
  ]);
  if (codes !== 0) throw new Error(`the second start should end with 0, not ${codes}`);
  const first = both.find((run) => run.child.exitCode === null);
  const second = both.find((run) => run.child.exitCode === 0);
  if (first === undefined || second === undefined)
    throw new Error(both.map((run) => run.output()).join("\n---\n"));
  if (!second.output().includes("already running")) throw new Error(`unclear: ${second.output()}`);
  await until("the first one runs", 60_000, () => first.output().includes("Courtloom is running:"));
  return first;
}

async function startOnTakenPort(site: Site, current: ProductRun): Promise<ProductRun> {
  const other = begin({ ...site, dataDir: `${site.dataDir}-other` });
  const code = await other.ended;
  if (code !== 1 || !other.output().includes(`Port ${site.port} is in use`)) {
    throw new Error(
      `a taken port should end the start with 1 and a sentence, not ${code}:\n${other.output()}`,
    );
  }
  return current;
}

/** SIGTERM ends everything within 15 s, with exit code 0 and nothing left. */
export async function stopAndCheck(site: Site, current: ProductRun): Promise<void> {
  const before = processes(site);
  current.child.kill("SIGTERM");
  const code = await Promise.race([current.ended, pause(15_000, "still running" as const, { ref: false })]);
  if (code !== 0) throw new Error(`after SIGTERM: exit code ${code}\n${current.output()}`);
  const left = Object.entries(before).filter(([, pid]) => isRunning(pid));
  if (left.length > 0) throw new Error(`left running: ${JSON.stringify(left)}`);
  if (!(await isPortFree(site.port))) throw new Error(`port ${site.port} is still taken`);
}

async function stopAndStart(site: Site, current: ProductRun): Promise<ProductRun> {
  await stopAndCheck(site, current);
  return beginAndWait(site);
}

function isAny(pids: Readonly<Record<string, number>>, names: readonly string[]): boolean {
  return names.some((name) => pids[name] !== undefined && isRunning(pids[name]));
}

export const SCENARIOS: readonly Scenario[] = [
  { name: "web is killed", run: (site, current) => killPart(site, current, "web") },
  { name: "live is killed", run: (site, current) => killPart(site, current, "live") },
  { name: "the database server is killed", run: killDatabase },
  { name: "the supervisor is killed", run: killSupervisor },
  { name: "all are killed at once", run: killEverything },
  { name: "stopped and started", run: stopAndStart },
  { name: "started twice at once", run: startTwiceAtOnce },
  { name: "started on a port in use", run: startOnTakenPort },
];
