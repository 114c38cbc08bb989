import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { setTimeout as pause } from "node:timers/promises";
import { isRunning, ownerUrl, readRemembered } from "@courtloom/db/embedded";
import postgres from "postgres";

/** Where and how the product runs in a fault run. */
export interface Site {
  /** Script of the supervisor. */
  readonly entry: string;
  readonly dataDir: string;
  readonly port: number;
}

/** One start of the supervisor. */
export interface ProductRun {
  readonly child: ChildProcess;
  readonly output: () => string;
  /** Exit code, once it has ended; `null` after a signal. */
  readonly ended: Promise<number | null>;
}

const RUNNING = "Courtloom is running:";

export function begin(site: Site, extraEnv: Readonly<Record<string, string>> = {}): ProductRun {
  const env = { ...process.env, PORT: String(site.port), DATA_DIR: site.dataDir, ...extraEnv };
  const child = spawn(process.execPath, [site.entry], { env, stdio: ["ignore", "pipe", "pipe"] });
  let output = "";
  const keep = (chunk: Buffer): void => {
    output += chunk.toString("utf8");
  };
  child.stdout.on("data", keep);
  child.stderr.on("data", keep);
  const ended = new Promise<number | null>((resolve) => child.once("exit", resolve));
  return { child, output: () => output, ended };
}

/** Starts it and waits until it says that it runs. */
export async function beginAndWait(site: Site): Promise<ProductRun> {
  const run = begin(site);
  await until("the product runs", 600_000, () => {
    if (run.child.exitCode !== null) throw new Error(`it ended with ${run.child.exitCode}:\n${run.output()}`);
    return run.output().includes(RUNNING);
  });
  return run;
}

/** Waits for a state, asking every 50 ms; an error that names it when it does not come. */
export async function until(
  what: string,
  withinMs: number,
  holds: () => boolean | Promise<boolean>,
): Promise<void> {
  const end = performance.now() + withinMs;
  while (!(await holds())) {
    if (performance.now() > end) throw new Error(`not within ${withinMs / 1000} s: ${what}`);
    await pause(50);
  }
}

export type Processes = Readonly<Record<string, number>>;

/** Ids of the supervisor, its children and the database server as the data folder tells them. */
export function processes(site: Site): Processes {
  const parts: Processes = JSON.parse(readFileSync(join(site.dataDir, "processes.json"), "utf8"));
  const home = readRemembered(join(site.dataDir, "postgres.json"))?.home ?? site.dataDir;
  const database = Number(readFileSync(join(home, "postgres", "postmaster.pid"), "utf8").split("\n")[0]);
  return { ...parts, database };
}

export function kill9(pid: number | undefined): void {
  if (pid === undefined || !isRunning(pid)) throw new Error(`there is no process ${pid} to kill`);
  process.kill(pid, "SIGKILL");
}

/** True if the front door hands a request on to the part behind it. */
export async function pageAnswers(site: Site): Promise<boolean> {
  try {
    const response = await fetch(`http://127.0.0.1:${site.port}/`, { signal: AbortSignal.timeout(5000) });
    await response.arrayBuffer();
    return response.status < 500;
  } catch {
    return false;
  }
}

/** Runs statements as the database's owner. */
export async function inDatabase<T>(site: Site, use: (sql: postgres.Sql) => Promise<T>): Promise<T> {
  const remembered = readRemembered(join(site.dataDir, "postgres.json"));
  if (remembered === undefined) throw new Error(`no database in ${site.dataDir}`);
  const sql = postgres(ownerUrl(remembered, "courtloom"), {
    max: 1,
    connect_timeout: 5,
    onnotice: () => undefined,
  });
  try {
    return await use(sql);
  } finally {
    await sql.end({ timeout: 1 });
  }
}
