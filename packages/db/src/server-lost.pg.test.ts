import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it, vi } from "vitest";
import { startEmbeddedPostgres } from "./embedded/start-embedded-postgres.ts";
import type { EntryStore } from "./entry-store.ts";
import { migrate } from "./migrate/migrate.ts";
import { openDb } from "./open-db.ts";
import { createPostgresEntryStore } from "./postgres-entry-store.ts";
import { item, laneOf, openingOf } from "./testing/log-fixtures.ts";
import { seedAcademy, seedMatch } from "./testing/seed-academy.ts";

const MATCH = { academyId: "curlew", matchId: "match" };
const LANE = { ...MATCH, laneId: "lead" };

async function start(dataDir: string) {
  const started = await startEmbeddedPostgres({ dataDir, log: () => undefined, durable: true });
  if (!started.ok) throw new Error(JSON.stringify(started.error));
  return started.value;
}

/** Appends one entry after the other until the database answers no more; the last n that was acknowledged. */
async function appendUntilLost(store: EntryStore): Promise<number> {
  for (let n = 1; ; n += 1) {
    const appended = await store.append({ ...LANE, items: [item("lead", n)] });
    if (!appended.ok) {
      expect(appended.error).toEqual({ code: "unavailable" });
      return n - 1;
    }
  }
}

it("[ES15] answers `unavailable` while the server is gone, loses nothing acknowledged, and goes on after", async () => {
  const dataDir = mkdtempSync(join(tmpdir(), "courtloom-lost-"));
  const server = await start(dataDir);
  const secret = "a secret of this test";
  const migrated = await migrate({ ownerUrl: server.url, secret, log: () => undefined });
  if (!migrated.ok) throw new Error(migrated.error.code);
  const db = openDb(migrated.value.appUrl);
  await seedAcademy(db, MATCH.academyId);
  await seedMatch(db, MATCH.academyId, MATCH.matchId);
  const store = createPostgresEntryStore(db, { log: () => undefined });
  await store.openMatch({ ...MATCH, opened: openingOf(MATCH.matchId) });
  await store.openLane(laneOf(MATCH.academyId, MATCH.matchId, "lead"));
  const hints: number[] = [];
  await store.listen(({ pos }) => hints.push(pos));

  const appending = appendUntilLost(store);
  await vi.waitFor(async () => {
    const head = await store.head(MATCH);
    expect(head.ok && head.value.pos).toBeGreaterThan(5);
  });
  process.kill(server.pid, "SIGKILL");
  const acknowledged = await appending;
  await server.exited;
  const lost = { ok: false, error: { code: "unavailable" } };
  const meanwhile = await Promise.all([
    store.head(MATCH),
    store.heads(),
    store.read({ ...MATCH, after: 0, limit: 10 }),
    store.recordHeard([{ ...MATCH, heardMs: 1, unsent: 0 }]),
    store.sealMatch(MATCH),
    store.incarnation(),
  ]);
  expect(meanwhile).toEqual(meanwhile.map(() => lost));

  const again = await start(dataDir);
  expect(again.port).toBe(server.port);
  await vi.waitFor(async () => expect((await store.incarnation()).ok).toBe(true), { timeout: 10_000 });
  const log = await store.read({ ...MATCH, after: 0, limit: 100_000 });
  const kept = log.ok
    ? log.value.entries.filter(({ laneId }) => laneId === "lead").map(({ entry }) => entry.n)
    : [];
  expect(acknowledged).toBeGreaterThan(0);
  expect(kept.length).toBeGreaterThanOrEqual(acknowledged);
  // One more may have been committed and not acknowledged; sent again, it is known.
  expect(kept.length).toBeLessThanOrEqual(acknowledged + 1);
  expect(kept).toEqual(kept.map((_, i) => i + 1));
  expect(await store.append({ ...LANE, items: [item("lead", acknowledged + 1)] })).toMatchObject({
    ok: true,
  });
  await vi.waitFor(
    () => {
      store.notify({ matchId: "match", pos: 7_777 });
      expect(hints).toContain(7_777);
    },
    { timeout: 15_000, interval: 200 },
  );

  await db.close();
  await again.stop();
  rmSync(dataDir, { recursive: true, force: true });
}, 90_000);
