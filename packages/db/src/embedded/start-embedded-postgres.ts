import { randomBytes } from "node:crypto";
import { chmodSync, mkdirSync, realpathSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { err, ok, type Result } from "@courtloom/core";
import { findBinaries } from "./binaries.ts";
import { choosePlace, type Place } from "./choose-place.ts";
import { chooseRunAs } from "./choose-run-as.ts";
import type { EmbeddedError } from "./embedded-error.ts";
import { acquireLock, type FileLock } from "./file-lock.ts";
import { freePort, isPortFree } from "./free-port.ts";
import { launch, type Running } from "./launch.ts";
import { checkClusterVersion, clusterExists, makeCluster } from "./make-cluster.ts";
import { readyDatabase } from "./probe.ts";
import { DATABASE_NAME, ownerUrl, type Remembered, readRemembered, writeRemembered } from "./remembered.ts";
import type { RunAs } from "./run-command.ts";
import { settle } from "./settle.ts";
import { stopServer } from "./stop-server.ts";

export interface EmbeddedOptions {
  /** Folder for the cluster, its password and its log; made if missing. */
  readonly dataDir: string;
  /** Gets one line per step that takes time or that a person should know of. */
  readonly log: (line: string) => void;
  /** False only for throw-away test data: faster, and not safe against a power cut. */
  readonly durable?: boolean;
}

export interface EmbeddedServer {
  /** The owner's connection: for migrations, never for the application itself. */
  readonly url: string;
  readonly port: number;
  readonly pid: number;
  /** True if an earlier run had left it running. */
  readonly adopted: boolean;
  /** Resolves when the server has ended, asked to or not; it can then be started anew. */
  readonly exited: Promise<void>;
  /** Ends the server, adopted or not, within 22 s; resolves when it is gone. */
  readonly stop: () => Promise<void>;
}

interface Start {
  readonly place: Place;
  readonly runAs: RunAs | undefined;
  readonly durable: boolean;
  readonly file: string;
  readonly log: (line: string) => void;
}

const START_TRIES = 5;
const FIRST_PAUSE_MS = 200;

/**
 * A private Postgres on a loopback port, started or adopted. One process at a time may hold a data folder.
 * Survives what an earlier run left: an orphaned server, a stale pid file, a reused process id.
 */
export async function startEmbeddedPostgres(
  options: EmbeddedOptions,
): Promise<Result<EmbeddedServer, EmbeddedError>> {
  const prepared = await prepare(options);
  if (!prepared.ok) return prepared;
  const start = prepared.value;
  const lock = await acquireLock(join(start.place.home, "postgres.lock"));
  if (!lock.ok) return err({ code: "busy", place: start.place.home, holderPid: lock.error.pid });
  try {
    const server = await bringUp(start, lock.value);
    if (!server.ok) lock.value.release();
    return server;
  } catch (error) {
    lock.value.release();
    return err({ code: "start-failed", detail: String(error) });
  }
}

async function prepare(options: EmbeddedOptions): Promise<Result<Start, EmbeddedError>> {
  const made = makeDataDir(resolve(options.dataDir));
  if (!made.ok) return made;
  const dataDir = made.value;
  const file = join(dataDir, "postgres.json");
  const home = readRemembered(file)?.home;
  const binaries = findBinaries();
  if (!binaries.ok) return binaries;
  const runAs = await chooseRunAs(join(home ?? dataDir, "postgres"), options.log);
  if (!runAs.ok) return runAs;
  const place = await choosePlace(dataDir, home, binaries.value, runAs.value);
  if (!place.ok) return place;
  if (place.value.home !== dataDir && home === undefined) {
    options.log(`${dataDir} is closed to the database's user; the database is in ${place.value.home}`);
  }
  return ok({
    place: place.value,
    runAs: runAs.value,
    durable: options.durable ?? true,
    file,
    log: options.log,
  });
}

/** As root others may pass through the folder, not list it: the server is another user. */
function makeDataDir(dataDir: string): Result<string, EmbeddedError> {
  try {
    mkdirSync(dataDir, { recursive: true, mode: 0o700 });
    if (process.getuid?.() === 0) chmodSync(dataDir, (statSync(dataDir).mode & 0o777) | 0o011);
    return ok(realpathSync(dataDir));
  } catch (error) {
    return err({ code: "place-closed", place: dataDir, detail: String(error) });
  }
}

async function bringUp(start: Start, lock: FileLock): Promise<Result<EmbeddedServer, EmbeddedError>> {
  const remembered = await ensureCluster(start);
  if (!remembered.ok) return remembered;
  const version = checkClusterVersion(start.place);
  if (!version.ok) return version;
  const found = await settle(start.place.cluster, remembered.value);
  if (!found.ok) return found;
  const adopted = found.value && (await keepIfReady(start, found.value, remembered.value));
  if (adopted) return ok(serverOf(start, adopted, remembered.value, true, lock));
  const running = await startWithRetries(start, remembered.value);
  if (!running.ok) return running;
  const current = { ...remembered.value, port: running.value.port };
  const ready = await readyDatabase(current, start.durable);
  if (!ready.ok) await stopServer(running.value.pid);
  return ready.ok ? ok(serverOf(start, running.value, current, false, lock)) : ready;
}

async function ensureCluster(start: Start): Promise<Result<Remembered, EmbeddedError>> {
  const known = readRemembered(start.file);
  if (clusterExists(start.place)) return known ? ok(known) : err({ code: "password-lost", file: start.file });
  start.log("making the database (a few seconds, only once)");
  const remembered: Remembered = {
    port: known?.port ?? (await freePort()),
    password: known?.password ?? randomBytes(24).toString("base64url"),
    home: start.place.home,
  };
  // The password is kept before the cluster exists: a cluster without its password would be lost.
  writeRemembered(start.file, remembered);
  const made = await makeCluster(start.place, remembered.password, start.runAs, start.durable);
  return made.ok ? ok(remembered) : made;
}

/** An adopted server that runs with unsafe settings, or went away meanwhile, is ended and started by us. */
async function keepIfReady(
  start: Start,
  found: Running,
  remembered: Remembered,
): Promise<Running | undefined> {
  try {
    const ready = await readyDatabase({ ...remembered, port: found.port }, start.durable);
    if (ready.ok) return found;
    start.log(`the database that was left running is not safe (${ready.error.code}); starting it anew`);
  } catch (error) {
    start.log(`the database that was left running went away (${String(error)}); starting it anew`);
  }
  await stopServer(found.pid);
  return undefined;
}

async function startWithRetries(
  start: Start,
  remembered: Remembered,
): Promise<Result<Running, EmbeddedError>> {
  let port = remembered.port;
  let last: EmbeddedError = { code: "start-failed", detail: "" };
  for (let attempt = 0; attempt < START_TRIES; attempt += 1) {
    if (attempt > 0) await pause(FIRST_PAUSE_MS * 2 ** attempt);
    const left = await settle(start.place.cluster, remembered);
    if (!left.ok) return left;
    if (left.value) return ok(left.value);
    if (!(await isPortFree(port))) port = await freePort();
    const running = await launch(start.place, port, start.runAs, start.durable);
    if (running.ok) {
      writeRemembered(start.file, { ...remembered, port });
      return running;
    }
    last = running.error;
  }
  return err(last);
}

function serverOf(
  start: Start,
  running: Running,
  remembered: Remembered,
  adopted: boolean,
  lock: FileLock,
): EmbeddedServer {
  const current = { ...remembered, port: running.port };
  if (adopted && running.port !== remembered.port) writeRemembered(start.file, current);
  return {
    url: ownerUrl(current, DATABASE_NAME),
    port: running.port,
    pid: running.pid,
    adopted,
    exited: running.exited.then(lock.release),
    stop: async () => {
      await stopServer(running.pid);
      lock.release();
    },
  };
}
