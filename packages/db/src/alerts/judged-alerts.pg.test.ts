import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { AlertKey } from "../alert-store.ts";
import { createAlertStore } from "../create-alert-store.ts";
import { createDayStore } from "../create-day-store.ts";
import { type Db, openDb } from "../open-db.ts";
import { type FreshDatabase, freshDatabase } from "../testing/fresh-database.ts";
import { FORMAT } from "../testing/log-fixtures.ts";
import { seedAcademy } from "../testing/seed-academy.ts";

const ACADEMY = "curlew";
const NOW_MS = 1_780_000_000_000;

describe("what staff said of alerts", () => {
  let database: FreshDatabase;
  let db: Db;

  beforeAll(async () => {
    database = await freshDatabase();
    db = openDb(database.appUrl);
    await seedAcademy(db, ACADEMY);
  });
  afterAll(async () => {
    await db.close();
    await database.drop();
  });

  const keyOf = (rate: AlertKey["rate"], episode: number): AlertKey => ({
    matchId: "m1",
    playerId: "player-a",
    rate,
    version: 1,
    episode,
  });

  it("[WA27] counts each alert once, by the last word of each member, and none of another academy", async () => {
    const days = createDayStore(db);
    const alerts = createAlertStore(db);
    const { dayId, courtIds } = await days.createDay({
      ...{ academyId: ACADEMY, name: "Tide Cup", date: "2026-05-30", courts: [{ name: "Court 1" }] },
    });
    const added = await days.addMatch({
      ...{ academyId: ACADEMY, matchId: "m1", dayId, courtId: courtIds[0] ?? null, format: FORMAT },
      playerIds: { A: "player-a", B: "player-b" },
    });
    if (!added.ok) throw new Error(added.error.code);
    expect(await days.judgedAlerts({ academyId: ACADEMY })).toEqual([]);
    const said = {
      ...{ match: { x: 4, n: 5, offPlan: 0 }, usual: 0.3, source: "own", strength: 1, set: 1 },
      ...{ isOver: false, isDue: false, breaks: 0 },
    } as const;
    const raised = [keyOf("lineMissed", 1), keyOf("lineMissed", 2), keyOf("passedUp", 1)].map((key) => ({
      ...key,
      ...{ side: "A", raisedEntryId: "p1", raisedPos: 2, raisedMs: NOW_MS, state: "standing", pos: 3, said },
    })) as Parameters<typeof alerts.writeAlerts>[0]["alerts"];
    expect((await alerts.writeAlerts({ academyId: ACADEMY, matchId: "m1", alerts: raised })).ok).toBe(true);
    const say = (key: AlertKey, by: string, useful: boolean) =>
      alerts.addMark({
        academyId: ACADEMY,
        key,
        mark: { kind: "useful", by, atMs: NOW_MS, details: { useful } },
      });
    await say(keyOf("lineMissed", 1), "coach-1", false);
    await say(keyOf("lineMissed", 1), "coach-1", true);
    await say(keyOf("lineMissed", 1), "coach-2", false);
    await say(keyOf("lineMissed", 2), "coach-1", false);
    await say(keyOf("passedUp", 1), "coach-1", true);
    expect(await days.judgedAlerts({ academyId: ACADEMY })).toEqual([
      { rate: "lineMissed", x: 1, n: 2 },
      { rate: "passedUp", x: 1, n: 1 },
    ]);
    expect(await days.judgedAlerts({ academyId: "heron" })).toEqual([]);
  });
});
