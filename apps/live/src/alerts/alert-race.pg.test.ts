import { createAlertStore, createDayStore, type Db, openDb } from "@courtloom/db";
import { type FreshDatabase, freshDatabase } from "@courtloom/db/testing";
import { THREE_SETS } from "@courtloom/match-log/testing";
import { afterAll, beforeAll, expect, it } from "vitest";
import { chartOn, createAlertDay, listsTold, noticesTold } from "../testing/alert-day.ts";
import { alertKeyText } from "./alert-line-of.ts";

let database: FreshDatabase;
let db: Db;

/** The invented day's first match, in the database too. */
const seed = async (): Promise<string> => {
  const days = createDayStore(db);
  const academy = { academyId: "curlew", name: "Curlew Reach", timeZone: "Europe/Lisbon", language: "en" };
  await days.setupAcademy({ ...academy, isDemo: false, director: { displayName: "Maren H.", userId: null } });
  for (const side of ["A", "B"] as const)
    await days.addPlayer({
      ...{ academyId: "curlew", playerId: `m1-${side}`, displayName: `Player ${side}`, hand: "right" },
      ...{ birthYear: null, squad: null, own: side === "A", level: null },
    });
  const courts = [{ name: "Court 1" }];
  const { dayId, courtIds } = await days.createDay({
    academyId: "curlew",
    name: "Tide Cup",
    date: "2026-05-30",
    courts,
  });
  const added = await days.addMatch({
    ...{ academyId: "curlew", matchId: "m1", dayId, courtId: courtIds[0] ?? null },
    ...{ playerIds: { A: "m1-A", B: "m1-B" }, format: THREE_SETS },
  });
  if (!added.ok) throw new Error(added.error.code);
  return dayId;
};

beforeAll(async () => {
  database = await freshDatabase();
  db = openDb(database.appUrl);
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

it("[AL11, AL13] two nodes that race over one database write one row and tell each member once", async () => {
  const dayId = await seed();
  const kept = createAlertStore(db);
  const world = createAlertDay();
  // The day's own id is the database's; to the rooms it is d1.
  const alerts = { ...kept, dayAlerts: () => kept.dayAlerts({ academyId: "curlew", dayId }) };
  const nodes = [world.addNode({}, alerts), world.addNode({}, alerts)] as const;
  const peers = nodes.flatMap((node) => [node.connect("coach"), node.connect("director")]);
  for (const peer of peers)
    expect(await peer.ask("alerts.watch", { dayId: "d1" })).toMatchObject({ ok: true });
  const { miss } = await chartOn(nodes[0]);
  await miss(1, 4);
  /** Real calls take real time: the clock of the rooms goes on until both have sent what they know. */
  const until = async (holds: () => boolean): Promise<void> => {
    while (!holds()) {
      await world.time.advance(500);
      await kept.alertsOf({ academyId: "curlew", matchId: "m1" });
    }
  };
  await until(() => peers.every((peer) => listsTold(peer).length > 0));
  await until(() => peers.flatMap(noticesTold).length >= 2);
  await world.time.advance(6_000);
  await kept.alertsOf({ academyId: "curlew", matchId: "m1" });
  const rows = await kept.alertsOf({ academyId: "curlew", matchId: "m1" });
  expect(rows.ok && rows.value.map(alertKeyText)).toHaveLength(1);
  const told = peers.map((peer) => noticesTold(peer).length);
  expect([(told[0] ?? 0) + (told[2] ?? 0), (told[1] ?? 0) + (told[3] ?? 0)]).toEqual([1, 1]);
  const [given] = await db.sql.begin(async (sql) => {
    await sql`select set_config('courtloom.academy_id', 'curlew', true)`;
    return sql<{ count: number }[]>`select count(*)::int as count from alert_notice`;
  });
  expect(given).toEqual({ count: 2 });
  expect(nodes.flatMap(({ faults }) => faults)).toEqual([]);
  await Promise.all(nodes.map(({ live }) => live.stop()));
}, 60_000);
