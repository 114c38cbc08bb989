import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ok, type Result } from "@courtloom/core";
import type { EmbeddedError } from "./embedded-error.ts";
import { isAbandoned } from "./file-lock.ts";
import { readPostmasterPid } from "./launch.ts";
import { servesFolder } from "./process-facts.ts";
import { type EmbeddedServer, startEmbeddedPostgres } from "./start-embedded-postgres.ts";
import { stopServer } from "./stop-server.ts";

const PREFIX = "courtloom-test-";

/**
 * A server for tests, in a folder of its own below the system's temporary one; `stop` removes both. Those of
 * test runs that were killed are removed first.
 */
export async function startThrowawayPostgres(
  log: (line: string) => void = () => undefined,
): Promise<Result<EmbeddedServer, EmbeddedError>> {
  await removeAbandoned();
  const dataDir = mkdtempSync(join(tmpdir(), PREFIX));
  const remove = (): void => rmSync(dataDir, { recursive: true, force: true });
  const started = await startEmbeddedPostgres({ dataDir, log, durable: false });
  if (!started.ok) {
    remove();
    return started;
  }
  const server = started.value;
  const stop = async (): Promise<void> => {
    await server.stop();
    remove();
  };
  return ok({ ...server, stop });
}

async function removeAbandoned(): Promise<void> {
  const folders = readdirSync(tmpdir()).filter((name) => name.startsWith(PREFIX));
  for (const folder of folders.map((name) => join(tmpdir(), name))) {
    if (!isAbandoned(join(folder, "postgres.lock"))) continue;
    const cluster = join(folder, "postgres");
    const pid = readPostmasterPid(cluster)?.pid;
    if (pid !== undefined && servesFolder(pid, cluster)) await stopServer(pid);
    rmSync(folder, { recursive: true, force: true });
  }
}
