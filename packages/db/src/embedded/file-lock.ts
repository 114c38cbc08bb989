import { randomBytes } from "node:crypto";
import { linkSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { err, ok, type Result } from "@courtloom/core";
import { processFacts } from "./process-facts.ts";

export interface FileLock {
  /** Gives the lock up, if it is still this process's; may be called twice. */
  readonly release: () => void;
  /** Replaces the note that a process finding the lock held gets to read. */
  readonly setNote: (note: string) => void;
}

/** `pid` is undefined while another process is just taking the lock over from a dead one. */
export interface LockHeld {
  readonly pid: number | undefined;
  readonly note: string;
}

export interface LockContent extends LockHeld {
  readonly pid: number;
  readonly startMark: string;
  readonly token: string;
}

const TAKEOVER_TRIES = 40;
const TAKEOVER_STALE_MS = 10_000;

/**
 * Takes the lock at `path` for this process. A lock of a process that ended, were its id in use again, is
 * taken over. Only one of several that try at once gets it.
 */
export async function acquireLock(path: string, note = ""): Promise<Result<FileLock, LockHeld>> {
  const mine: LockContent = {
    pid: process.pid,
    startMark: processFacts(process.pid)?.startMark ?? "",
    token: randomBytes(9).toString("base64url"),
    note,
  };
  for (let attempt = 0; attempt < TAKEOVER_TRIES; attempt += 1) {
    if (publish(path, mine)) return ok(lockOf(path, mine));
    const holder = readLock(path);
    if (holder !== undefined && isHolderAlive(holder)) return err({ pid: holder.pid, note: holder.note });
    if (takeOver(path, holder, mine)) return ok(lockOf(path, mine));
    await pause(50);
  }
  return err({ pid: undefined, note: "" });
}

/** Waits until the lock is free, asking every 200 ms; the last holder when `timeoutMs` have passed. */
export async function waitForLock(path: string, timeoutMs: number): Promise<Result<FileLock, LockHeld>> {
  const until = performance.now() + timeoutMs;
  for (;;) {
    const taken = await acquireLock(path);
    if (taken.ok || performance.now() > until) return taken;
    await pause(200);
  }
}

/** True if there is a lock at `path` and the process that took it has ended. */
export function isAbandoned(path: string): boolean {
  const holder = readLock(path);
  return holder !== undefined && !isHolderAlive(holder);
}

/** Reads a lock file's text; `undefined` if it is no lock (cut off by a crash, edited). */
export function parseLock(text: string): LockContent | undefined {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== "object" || value === null) return undefined;
    const { pid, startMark, token, note } = value as Record<string, unknown>;
    const valid = Number.isSafeInteger(pid) && typeof startMark === "string" && typeof token === "string";
    return valid
      ? { pid: Number(pid), startMark, token, note: typeof note === "string" ? note : "" }
      : undefined;
  } catch {
    return undefined;
  }
}

function readLock(path: string): LockContent | undefined {
  try {
    return parseLock(readFileSync(path, "utf8"));
  } catch {
    // Released between our try and our look.
    return undefined;
  }
}

function isHolderAlive(holder: LockContent): boolean {
  const facts = processFacts(holder.pid);
  return facts !== undefined && !facts.zombie && facts.startMark === holder.startMark;
}

/** Links a finished file into place, so that nobody ever reads half a lock. */
function publish(path: string, content: LockContent): boolean {
  const draft = `${path}.${content.token}`;
  writeFileSync(draft, JSON.stringify(content), { mode: 0o600 });
  try {
    linkSync(draft, path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  } finally {
    rmSync(draft, { force: true });
  }
}

function replace(path: string, content: LockContent): void {
  const draft = `${path}.${content.token}`;
  writeFileSync(draft, JSON.stringify(content), { mode: 0o600 });
  renameSync(draft, path);
}

/** Removes the dead `holder`'s lock and puts ours there; a second file keeps others from doing so meanwhile. */
function takeOver(path: string, holder: LockContent | undefined, mine: LockContent): boolean {
  const guard = `${path}.takeover`;
  if (!publish(guard, mine)) {
    if (ageMs(guard) > TAKEOVER_STALE_MS) rmSync(guard, { force: true });
    return false;
  }
  try {
    if (readLock(path)?.token !== holder?.token) return false;
    rmSync(path, { force: true });
    return publish(path, mine);
  } finally {
    rmSync(guard, { force: true });
  }
}

function ageMs(path: string): number {
  try {
    return Date.now() - statSync(path).mtimeMs;
  } catch {
    return 0;
  }
}

function lockOf(path: string, mine: LockContent): FileLock {
  const isOurs = (): boolean => readLock(path)?.token === mine.token;
  return {
    release: () => {
      if (isOurs()) rmSync(path, { force: true });
    },
    setNote: (note) => {
      if (isOurs()) replace(path, { ...mine, note });
    },
  };
}
