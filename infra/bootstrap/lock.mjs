import { randomBytes } from "node:crypto";
import { readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { step } from "./run.mjs";

/** The holder touches its lock this often; one that was not touched for `STALE_MS` is nobody's. */
const TOUCH_MS = 2000;
const STALE_MS = 15_000;

/**
 * Waits until this process alone may set the checkout up. A lock whose holder ended, or that was not touched
 * for 15 s, is taken over.
 * @param {string} path
 * @returns {Promise<() => void>} gives the lock up
 */
export async function takeLock(path) {
  const token = `${process.pid} ${randomBytes(9).toString("base64url")}`;
  await step("Waiting for another set-up of this folder to finish", async () => {
    while (!(await tryLock(path, token))) await pause(200);
  });
  const touch = setInterval(() => {
    const now = new Date();
    if (read(path) === token) utimesSync(path, now, now);
  }, TOUCH_MS);
  touch.unref();
  return () => {
    clearInterval(touch);
    if (read(path) === token) rmSync(path, { force: true });
  };
}

async function tryLock(path, token) {
  try {
    writeFileSync(path, token, { flag: "wx" });
  } catch (error) {
    if (error.code !== "EEXIST") throw error;
    if (isStale(path)) putAside(path, token);
    return false;
  }
  // Whoever found the same dead lock a moment before us may have put ours aside instead: look again.
  await pause(50);
  return read(path) === token;
}

function isStale(path) {
  const holder = Number(read(path)?.split(" ")[0]);
  const ageMs = Date.now() - (statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
  if (ageMs > STALE_MS) return true;
  return Number.isInteger(holder) && holder > 0 && !isAlive(holder);
}

function isAlive(pid) {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return error.code === "EPERM";
  }
}

function putAside(path, token) {
  const aside = `${path}.${token.replaceAll(" ", "-")}`;
  try {
    renameSync(path, aside);
    rmSync(aside, { force: true });
  } catch (error) {
    if (error.code !== "ENOENT") throw error;
  }
}

function read(path) {
  try {
    return readFileSync(path, "utf8");
  } catch (error) {
    if (error.code === "ENOENT") return undefined;
    throw error;
  }
}
