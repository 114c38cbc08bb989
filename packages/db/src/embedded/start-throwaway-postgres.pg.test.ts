import { existsSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import postgres from "postgres";
import { describe, expect, it } from "vitest";
import { type EmbeddedServer, startThrowawayPostgres } from "./index.ts";
import { isRunning } from "./process-facts.ts";

async function start(): Promise<{ server: EmbeddedServer; folder: string }> {
  const result = await startThrowawayPostgres();
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const sql = postgres(result.value.url, { max: 1 });
  const [row] = await sql<{ cluster: string }[]>`select current_setting('data_directory') as cluster`;
  await sql.end();
  return { server: result.value, folder: dirname(row?.cluster ?? "") };
}

describe("startThrowawayPostgres", { timeout: 60_000 }, () => {
  it("removes server and folder when stopped, and those of a run that was killed", async () => {
    const killed = await start();
    // What kill -9 of a test run leaves: the server, and a lock whose process is gone.
    const gone = { pid: 999_999_999, startMark: "x", token: "t", note: "" };
    writeFileSync(join(killed.folder, "postgres.lock"), JSON.stringify(gone));
    const next = await start();
    expect(isRunning(killed.server.pid)).toBe(false);
    expect(existsSync(killed.folder)).toBe(false);
    expect(isRunning(next.server.pid)).toBe(true);
    await next.server.stop();
    expect(isRunning(next.server.pid)).toBe(false);
    expect(existsSync(next.folder)).toBe(false);
  });
});
