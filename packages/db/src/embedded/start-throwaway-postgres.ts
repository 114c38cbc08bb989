import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ok, type Result } from "@courtloom/core";
import type { EmbeddedError } from "./embedded-error.ts";
import { type EmbeddedServer, startEmbeddedPostgres } from "./start-embedded-postgres.ts";

/** A server for tests, in a folder of its own below the system's temporary one; `stop` removes both. */
export async function startThrowawayPostgres(
  log: (line: string) => void = () => undefined,
): Promise<Result<EmbeddedServer, EmbeddedError>> {
  const dataDir = mkdtempSync(join(tmpdir(), "courtloom-test-"));
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
