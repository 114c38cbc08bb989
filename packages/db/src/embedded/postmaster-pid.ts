/** What a running Postgres writes into `postmaster.pid`; the lines after the second may be missing early on. */
export interface PostmasterPid {
  readonly pid: number;
  /** The data folder as the server was given it. */
  readonly dataDir: string;
  readonly port: number | undefined;
  /** True once it accepts connections. */
  readonly ready: boolean;
}

/**
 * Reads the text of `postmaster.pid`: pid, data folder, start time, port, socket folder, address, shared
 * memory key, status, one a line. `undefined` if it holds no process id, for instance after a full disk.
 */
export function parsePostmasterPid(text: string): PostmasterPid | undefined {
  const lines = text.split("\n").map((line) => line.trim());
  const pid = Number(lines[0]);
  if (!Number.isSafeInteger(pid) || pid < 2) return undefined;
  const port = Number(lines[3]);
  return {
    pid,
    dataDir: lines[1] ?? "",
    port: Number.isInteger(port) && port > 0 && port < 65_536 ? port : undefined,
    ready: lines[7] === "ready",
  };
}
