import { openSync, readFileSync, renameSync, statSync } from "node:fs";

const TURN_OVER_BYTES = 10_000_000;

export interface LogFile {
  readonly path: string;
  /** Open for appending; the one who opened it closes it. */
  readonly fd: number;
  /** Where this run's part begins. */
  readonly startByte: number;
}

/** Opens a log for appending; one of over 10 MB is put aside first as `<path>.1`. */
export function openLog(path: string): LogFile {
  const size = statSync(path, { throwIfNoEntry: false })?.size ?? 0;
  if (size > TURN_OVER_BYTES) renameSync(path, `${path}.1`);
  const startByte = size > TURN_OVER_BYTES ? 0 : size;
  return { path, fd: openSync(path, "a", 0o600), startByte };
}

/** The last `lineCount` lines written since the log was opened. */
export function logTail(log: LogFile, lineCount = 12): string {
  const text = readFileSync(log.path).subarray(log.startByte).toString("utf8").trimEnd();
  return text.split("\n").slice(-lineCount).join("\n");
}
