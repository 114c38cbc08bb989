import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import postgres from "postgres";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { embeddedErrorSentence } from "./embedded-error.ts";
import { isRunning } from "./process-facts.ts";
import { readRemembered } from "./remembered.ts";
import { type EmbeddedServer, startEmbeddedPostgres } from "./start-embedded-postgres.ts";

const isRoot = process.getuid?.() === 0;
let folder: string;
let dataDir: string;
let lines: string[];
const started: EmbeddedServer[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "courtloom-embedded-"));
  chmodSync(folder, 0o711);
  dataDir = join(folder, "data");
  lines = [];
});
afterEach(async () => {
  for (const server of started.splice(0)) await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function start(durable = true, where = dataDir): Promise<EmbeddedServer> {
  const result = await startEmbeddedPostgres({ dataDir: where, log: (line) => lines.push(line), durable });
  if (!result.ok) throw new Error(embeddedErrorSentence(result.error));
  started.push(result.value);
  return result.value;
}

async function query<T>(server: EmbeddedServer, use: (sql: postgres.Sql) => Promise<T>): Promise<T> {
  const sql = postgres(server.url, { max: 1, onnotice: () => undefined });
  try {
    return await use(sql);
  } finally {
    await sql.end();
  }
}

const pidFile = (): string => join(dataDir, "postgres", "postmaster.pid");

/** What kill -9 of our process leaves: a lock of a process that ended, and the server. */
function forgetHolder(): void {
  const lock = join(dataDir, "postgres.lock");
  writeFileSync(lock, JSON.stringify({ pid: 999_999_999, startMark: "x", token: "t", note: "" }));
}

describe("startEmbeddedPostgres", { timeout: 60_000 }, () => {
  it("[ST4] runs with durable settings, and keeps data and address over a stop", async () => {
    const first = await start();
    await query(first, (sql) => sql`create table kept (n integer)`);
    const settings = await query(
      first,
      (sql) => sql`select current_setting('fsync') f, current_setting('synchronous_commit') s,
        current_setting('full_page_writes') w`,
    );
    expect(settings[0]).toEqual({ f: "on", s: "on", w: "on" });
    await first.stop();
    const second = await start();
    expect(second.url).toBe(first.url);
    expect(await query(second, (sql) => sql`select * from kept`)).toHaveLength(0);
  });

  it("[ST4] starts a server anew that was left running without them", async () => {
    const unsafe = await start(false);
    forgetHolder();
    const safe = await start(true);
    expect(safe.adopted).toBe(false);
    expect(isRunning(unsafe.pid)).toBe(false);
    expect(lines.join()).toContain("not safe");
  });

  it("[ST4] refuses a setting for its role that would undo them", async () => {
    const server = await start();
    await query(server, (sql) => sql`alter role courtloom_owner set synchronous_commit = off`);
    await server.stop();
    const again = await startEmbeddedPostgres({ dataDir, log: () => undefined });
    expect(again).toEqual({
      ok: false,
      error: { code: "not-durable", setting: "synchronous_commit", value: "off" },
    });
  });

  it("[ST5] adopts a server that was left running, and stops it when asked", async () => {
    const first = await start();
    await query(first, (sql) => sql`create table kept (n integer)`);
    forgetHolder();
    const second = await start();
    expect(second).toMatchObject({ adopted: true, pid: first.pid, url: first.url });
    expect(await query(second, (sql) => sql`select * from kept`)).toHaveLength(0);
    await second.stop();
    await second.exited;
    expect(isRunning(first.pid)).toBe(false);
  });

  it.runIf(process.platform === "linux")("[ST5] adopts it also when the folder was renamed", async () => {
    const first = await start();
    forgetHolder();
    const renamed = join(folder, "renamed");
    renameSync(dataDir, renamed);
    const file = join(renamed, "postgres.json");
    writeFileSync(file, readFileSync(file, "utf8").replace(dataDir, renamed));
    const second = await start(true, renamed);
    expect(second).toMatchObject({ adopted: true, pid: first.pid });
  });

  it("[ST5] starts again after kill -9 of the server", async () => {
    const first = await start();
    await query(first, (sql) => sql`create table kept as select 1 n`);
    process.kill(first.pid, "SIGKILL");
    await first.exited;
    const second = await start();
    expect(second.adopted).toBe(false);
    expect(await query(second, (sql) => sql`select n from kept`)).toEqual([{ n: 1 }]);
  });

  it("[ST5] is not stopped by a pid file whose id another process has now", async () => {
    const first = await start();
    const text = readFileSync(pidFile(), "utf8");
    await first.stop();
    writeFileSync(pidFile(), text.replace(/^\d+/, String(process.pid)));
    expect((await start()).adopted).toBe(false);
  });

  it("[ST5] takes another port when its own is in use", async () => {
    const first = await start();
    await first.stop();
    const { createServer } = await import("node:net");
    const other = createServer().listen(first.port, "127.0.0.1");
    const second = await start();
    other.close();
    expect(second.port).not.toBe(first.port);
    expect(readRemembered(join(dataDir, "postgres.json"))?.port).toBe(second.port);
  });

  it("[ST3] lets only one of two starts have the folder", async () => {
    const both = await Promise.all(
      [0, 1].map(() => startEmbeddedPostgres({ dataDir, log: () => undefined })),
    );
    for (const result of both) if (result.ok) started.push(result.value);
    expect(both.filter((result) => result.ok)).toHaveLength(1);
    const failed = both.find((result) => !result.ok);
    expect(failed).toMatchObject({ error: { code: "busy", holderPid: process.pid } });
  });

  it("[ST6] changes nothing when the password is gone", async () => {
    await (await start()).stop();
    rmSync(join(dataDir, "postgres.json"));
    const again = await startEmbeddedPostgres({ dataDir, log: () => undefined });
    expect(again).toMatchObject({ ok: false, error: { code: "password-lost" } });
    expect(statSync(join(dataDir, "postgres", "PG_VERSION")).isFile()).toBe(true);
  });

  it("[ST6] makes the cluster anew when making it was cut off", async () => {
    mkdirSync(join(dataDir, "postgres.new"), { recursive: true });
    writeFileSync(join(dataDir, "postgres.new", "PG_VERSION"), "18\n");
    expect((await start()).adopted).toBe(false);
  });

  it("[ST6] leaves data alone that it does not know", async () => {
    mkdirSync(join(dataDir, "postgres"), { recursive: true });
    writeFileSync(join(dataDir, "postgres", "something"), "");
    const result = await startEmbeddedPostgres({ dataDir, log: () => undefined });
    expect(result).toMatchObject({ ok: false, error: { code: "place-closed" } });
    expect(statSync(join(dataDir, "postgres", "something")).isFile()).toBe(true);
  });

  it("[ST6] names the version when another one made the data", async () => {
    await (await start()).stop();
    writeFileSync(join(dataDir, "postgres", "PG_VERSION"), "15\n");
    const result = await startEmbeddedPostgres({ dataDir, log: () => undefined });
    expect(result).toMatchObject({ ok: false, error: { code: "other-version", found: "15" } });
  });

  it.runIf(isRoot)("[ST7] as root runs as the user who owns the data", async () => {
    const server = await start(false);
    const owner = statSync(join(dataDir, "postgres")).uid;
    expect(owner).not.toBe(0);
    expect(statSync(`/proc/${server.pid}`).uid).toBe(owner);
  });

  it.runIf(isRoot)("[ST7] as root goes where its user can, when the folder is closed", async () => {
    chmodSync(folder, 0o700);
    const server = await start(false);
    const home = readRemembered(join(dataDir, "postgres.json"))?.home ?? "";
    expect(home).toMatch(/^\/var\/lib\/courtloom\/[0-9a-f]{12}$/);
    await server.stop();
    expect((await start(false)).url).toBe(server.url);
    for (const running of started.splice(0)) await running.stop();
    rmSync(home, { recursive: true });
  });
});
