import { execFileSync } from "node:child_process";
import { readFileSync, statSync } from "node:fs";

export interface ProcessFacts {
  /** Ended, but its parent has not asked for its exit code yet; such a process holds nothing. */
  readonly zombie: boolean;
  /** Differs between two processes that get the same id one after the other. */
  readonly startMark: string;
  readonly command: string;
}

/** What the system knows of a process; `undefined` if there is none with this id. */
export function processFacts(pid: number): ProcessFacts | undefined {
  return process.platform === "linux" ? factsFromProc(pid) : factsFromPs(pid);
}

/** True if `pid` is a process that can still do something. */
export function isRunning(pid: number): boolean {
  const facts = processFacts(pid);
  return facts !== undefined && !facts.zombie;
}

/** State and start of `/proc/<pid>/stat`; the name in brackets may itself hold brackets and blanks. */
export function parseProcStat(text: string): { state: string; startTicks: string } | undefined {
  const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
  const [state, startTicks] = [fields[0], fields[19]];
  return state && startTicks ? { state, startTicks } : undefined;
}

function factsFromProc(pid: number): ProcessFacts | undefined {
  try {
    const stat = parseProcStat(readFileSync(`/proc/${pid}/stat`, "utf8"));
    if (stat === undefined) return undefined;
    const boot = readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
    const command = readFileSync(`/proc/${pid}/cmdline`, "utf8").replaceAll("\0", " ").trim();
    const zombie = stat.state === "Z" || stat.state === "X";
    return { zombie, startMark: `${boot}/${stat.startTicks}`, command };
  } catch {
    // No entry: the process ended, before or while it was read.
    return undefined;
  }
}

function factsFromPs(pid: number): ProcessFacts | undefined {
  try {
    const format = ["-o", "stat=", "-o", "lstart=", "-o", "command="];
    const line = execFileSync("ps", [...format, "-p", String(pid)], { encoding: "utf8" }).trim();
    const found = /^(\S+)\s+(\S+\s+\S+\s+\S+\s+\S+\s+\S+)\s*(.*)$/.exec(line);
    if (!found) return undefined;
    const [, state = "", startMark = "", command = ""] = found;
    return { zombie: state.startsWith("Z"), startMark, command };
  } catch {
    // ps ends with 1 when there is no such process.
    return undefined;
  }
}

/**
 * True if the running process `pid` is a Postgres that serves the folder `dataDir`. On Linux by its working
 * folder, which Postgres makes its data folder and which stays right when the folder was renamed.
 */
export function servesFolder(pid: number, dataDir: string): boolean {
  const facts = processFacts(pid);
  if (facts === undefined || facts.zombie) return false;
  if (process.platform !== "linux")
    return facts.command.includes("postgres") && facts.command.includes(dataDir);
  return worksIn(pid, dataDir);
}

/** True if `pid` has `folder` as its working folder (Linux only). */
export function worksIn(pid: number, folder: string): boolean {
  try {
    const [theirs, ours] = [statSync(`/proc/${pid}/cwd`), statSync(folder)];
    return theirs.ino === ours.ino && theirs.dev === ours.dev;
  } catch {
    // Ended, or another user's, which then cannot be serving a folder that only we may read.
    return false;
  }
}
