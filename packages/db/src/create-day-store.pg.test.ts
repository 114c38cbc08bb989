import { foldLog } from "@courtloom/match-log";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createDayStore } from "./create-day-store.ts";
import type { DayStore, ImportMatch } from "./day-store.ts";
import type { EntryStore } from "./entry-store.ts";
import { isUnavailable } from "./is-unavailable.ts";
import { type Db, openDb } from "./open-db.ts";
import { createPostgresEntryStore } from "./postgres-entry-store.ts";
import { type FreshDatabase, freshDatabase } from "./testing/fresh-database.ts";
import { entryOf, FORMAT, laneOf, openingOf } from "./testing/log-fixtures.ts";
import { countRows, seedAcademy } from "./testing/seed-academy.ts";

const ACADEMY = { academyId: "curlew" };
const PLAYERS = { A: "player-a", B: "player-b" };

let database: FreshDatabase;
let db: Db;
let days: DayStore;
let log: EntryStore;

beforeAll(async () => {
  database = await freshDatabase();
  db = openDb(database.appUrl);
  days = createDayStore(db);
  log = createPostgresEntryStore(db, { log: () => undefined });
  await seedAcademy(db, "curlew");
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

const newDay = (name: string) =>
  days.createDay({
    ...ACADEMY,
    name,
    date: "2026-05-30",
    courts: [{ name: "Court 1" }, { name: "Court 2" }],
  });

async function addMatch(dayId: string, courtId: string | null, more: object = {}): Promise<string> {
  const added = await days.addMatch({
    ...ACADEMY,
    dayId,
    courtId,
    playerIds: PLAYERS,
    format: FORMAT,
    ...more,
  });
  if (!added.ok) throw new Error(added.error.code);
  return added.value.matchId;
}

const open = (matchId: string) => log.openMatch({ ...ACADEMY, matchId, opened: openingOf(matchId) });

describe("academy", () => {
  it("[DB7] knows whether one is set up, and sets up the demonstration beside it", async () => {
    expect(await days.hasAcademy()).toBe(true);
    expect(await days.demoAcademyId()).toBeUndefined();
    const demo = { name: "Curlew Reach", timeZone: "Europe/Lisbon", language: "en", isDemo: true };
    const made = await days.setupAcademy({ ...demo, director: { displayName: "Ines", userId: null } });
    const academyId = made.ok ? made.value.academyId : "";
    expect(await days.demoAcademyId()).toBe(academyId);
    expect(await days.academy({ academyId })).toEqual({ academyId, ...demo });
    expect(await days.setupAcademy({ ...demo, director: { displayName: "Ines", userId: null } })).toEqual({
      ok: false,
      error: { code: "already_set_up" },
    });
    expect(await days.academy({ academyId: "nowhere" })).toBeUndefined();
  });
});

describe("members", () => {
  it("[DB16] are added once, and listed by name", async () => {
    const tobias = { memberId: "tobias", role: "coach", displayName: "Tobias A." } as const;
    await days.addMember({ ...ACADEMY, ...tobias, userId: null });
    await days.addMember({ ...ACADEMY, ...tobias, displayName: "Somebody else", userId: null });
    expect(await days.listMembers(ACADEMY)).toContainEqual(tobias);
    expect((await days.listMembers(ACADEMY)).filter((m) => m.memberId === "tobias")).toHaveLength(1);
  });
});

describe("day and order of play", () => {
  it("[DB9] puts a match after the last of its court, with subjects and mode by default", async () => {
    const { dayId, courtIds } = await newDay("Order of play");
    const [one = ""] = courtIds;
    await addMatch(dayId, one, { title: "First" });
    const second = await addMatch(dayId, one);
    const card = await days.matchCard({ ...ACADEMY, matchId: second });
    expect(card).toMatchObject({
      orderNo: 2,
      courtNo: 1,
      playedOn: "2026-05-30",
      subjects: ["A", "B"],
      coachingMode: "notKnown",
      firstServer: null,
      stage: "waiting",
      doubles: false,
      format: FORMAT,
      players: { A: { displayName: "Noor", hand: "right", own: true }, B: { displayName: "Teo" } },
      partners: { A: null, B: null },
    });
    expect(await days.dayMatches({ ...ACADEMY, dayId })).toMatchObject([{ title: "First" }, card]);
    expect(await days.listDays(ACADEMY)).toContainEqual({ dayId, name: "Order of play", date: "2026-05-30" });
  });

  it("[DB9] refuses a match of a day, court or player that is not there", async () => {
    const { dayId, courtIds } = await newDay("Somewhere");
    const other = await newDay("Elsewhere");
    const base = { ...ACADEMY, dayId, courtId: courtIds[0] ?? null, playerIds: PLAYERS, format: FORMAT };
    const codeOf = async (change: object) => {
      const added = await days.addMatch({ ...base, ...change });
      return added.ok ? "ok" : added.error.code;
    };
    expect(await codeOf({ dayId: "nowhere" })).toBe("unknown_day");
    expect(await codeOf({ courtId: other.courtIds[0] })).toBe("unknown_court");
    expect(await codeOf({ playerIds: { A: "player-a", B: "nobody" } })).toBe("unknown_player");
    expect(await codeOf({})).toBe("ok");
  });

  it("[DB11] shows on each court the open match, else the next, else the last", async () => {
    const { dayId, courtIds } = await newDay("Board");
    const [one = "", two = ""] = courtIds;
    const first = await addMatch(dayId, one);
    const second = await addMatch(dayId, one);
    const board = async () => {
      const found = await days.dayBoard({ ...ACADEMY, dayId });
      return found?.courts.map(({ current, next }) => [current?.matchId, next.map((card) => card.matchId)]);
    };
    expect(await board()).toEqual([
      [first, [second]],
      [undefined, []],
    ]);
    await open(first);
    expect(await board()).toEqual([
      [first, [second]],
      [undefined, []],
    ]);
    await days.setMatchOver({ ...ACADEMY, matchId: first, over: true });
    expect(await board()).toEqual([
      [second, []],
      [undefined, []],
    ]);
    await days.setMatchOver({ ...ACADEMY, matchId: first, over: false });
    expect((await board())?.[0]).toEqual([first, [second]]);
    await log.sealMatch({ ...ACADEMY, matchId: first });
    await days.changeMatch({ ...ACADEMY, matchId: second, change: { courtId: two } });
    expect(await board()).toEqual([
      [first, []],
      [second, []],
    ]);
    expect(await days.dayBoard({ ...ACADEMY, dayId })).toMatchObject({
      day: { dayId, name: "Board" },
      academyName: "Academy curlew",
      timeZone: "Europe/Lisbon",
      courts: [
        { no: 1, name: "Court 1", current: { stage: "sealed" } },
        { no: 2, name: "Court 2" },
      ],
    });
    expect(await days.dayBoard({ ...ACADEMY, dayId: "nowhere" })).toBeUndefined();
  });

  it("[DB12] changes what waits, and leaves alone what the opening froze", async () => {
    const { dayId, courtIds } = await newDay("Changes");
    const matchId = await addMatch(dayId, courtIds[0] ?? null);
    const change = { coachingMode: "practice", subjects: ["B"], firstServer: "A" } as const;
    expect(await days.changeMatch({ ...ACADEMY, matchId, change })).toMatchObject({
      ok: true,
      value: change,
    });
    await open(matchId);
    for (const frozen of [{ subjects: ["A"] }, { firstServer: "B" }] as const) {
      expect(await days.changeMatch({ ...ACADEMY, matchId, change: frozen })).toEqual({
        ok: false,
        error: { code: "already_opened" },
      });
    }
    expect(
      await days.changeMatch({ ...ACADEMY, matchId, change: { title: "Final", orderNo: 4 } }),
    ).toMatchObject({
      value: { title: "Final", orderNo: 4, stage: "open", firstServer: "A" },
    });
    const nowhere = { ...ACADEMY, matchId: "nowhere", change: {} };
    expect(await days.changeMatch(nowhere)).toEqual({ ok: false, error: { code: "unknown_match" } });
  });

  it("[DB12, CM6] says who may see what while a match is played; opening it does not set that back", async () => {
    const { dayId, courtIds } = await newDay("Coaching");
    const matchId = await addMatch(dayId, courtIds[0] ?? null);
    const say = async (coachingMode: "practice" | "permitted" | "notPermitted") =>
      days.changeMatch({ ...ACADEMY, matchId, change: { coachingMode } });
    await say("permitted");
    // The opening was made from a card of a moment ago, which had another mode.
    await open(matchId);
    expect((await days.matchCard({ ...ACADEMY, matchId }))?.coachingMode).toBe("permitted");
    expect(await say("notPermitted")).toMatchObject({
      ok: true,
      value: { coachingMode: "notPermitted", stage: "open" },
    });
    const board = await days.dayBoard({ ...ACADEMY, dayId });
    expect(board?.courts[0]?.current?.coachingMode).toBe("notPermitted");
  });

  it("[DB9] keeps both players of each side in doubles", async () => {
    const { dayId } = await newDay("Doubles");
    const base = { ...ACADEMY, birthYear: null, squad: null, own: false, level: null } as const;
    const third = await days.addPlayer({ ...base, displayName: "Ada", hand: "unknown" });
    const fourth = await days.addPlayer({ ...base, displayName: "Rui", hand: "left" });
    const partnerIds = { A: third.playerId, B: fourth.playerId };
    const matchId = await addMatch(dayId, null, { partnerIds });
    expect(await days.matchCard({ ...ACADEMY, matchId })).toMatchObject({
      doubles: true,
      partners: { A: { displayName: "Ada" }, B: { displayName: "Rui", own: false } },
    });
  });
});

describe("players and tallies", () => {
  it("[DB14] keeps one tally per player and match, and tells a player's past with the opponent", async () => {
    const { dayId } = await newDay("Past");
    const matchId = await addMatch(dayId, null, { title: "Round 1" });
    const write = (playerId: string, n: number) =>
      days.writeTally({ ...ACADEMY, matchId, playerId, version: "1", tally: { n } });
    expect(await write("player-b", 4)).toEqual({ ok: true, value: undefined });
    await write("player-b", 5);
    const history = await days.playerHistory({ ...ACADEMY, playerId: "player-b" });
    expect(history).toEqual([
      {
        matchId,
        playerId: "player-b",
        playedOn: "2026-05-30",
        version: "1",
        tally: { n: 5 },
        side: "B",
        opponent: { playerId: "player-a", displayName: "Noor", level: 3 },
        title: "Round 1",
      },
    ]);
    expect(await days.academyTallies(ACADEMY)).toHaveLength(1);
    expect(await days.academyTallies({ ...ACADEMY, since: "2026-05-31" })).toEqual([]);
    const { playerId } = await days.addPlayer({
      ...ACADEMY,
      displayName: "Isa",
      hand: "right",
      birthYear: 2013,
      squad: null,
      own: true,
      level: null,
    });
    expect(await write(playerId, 1)).toEqual({ ok: false, error: { code: "unknown_player" } });
    expect(
      await days.writeTally({ ...ACADEMY, matchId: "nowhere", playerId, version: "1", tally: {} }),
    ).toEqual({ ok: false, error: { code: "unknown_match" } });
  });

  it("[DB9] lists players by name and changes them", async () => {
    const player = await days.player({ ...ACADEMY, playerId: "player-a" });
    if (!player) throw new Error("no player");
    expect(await days.changePlayer({ ...ACADEMY, ...player, squad: "Red" })).toBe(true);
    expect(await days.player({ ...ACADEMY, playerId: "player-a" })).toEqual({ ...player, squad: "Red" });
    expect(await days.changePlayer({ ...ACADEMY, ...player, playerId: "nobody" })).toBe(false);
    const own = await days.listPlayers({ ...ACADEMY, ownOnly: true });
    expect(own.every((one) => one.own)).toBe(true);
    const names = (await days.listPlayers(ACADEMY)).map(({ displayName }) => displayName);
    expect(names).toEqual([...names].sort());
    expect(names.length).toBeGreaterThan(own.length);
  });
});

describe("import", () => {
  const imported = (i: number, entryCount: number): ImportMatch => ({
    match: {
      dayId: null,
      courtId: null,
      playedOn: "2025-10-04",
      playerIds: PLAYERS,
      format: FORMAT,
      title: `Past ${i}`,
    },
    opened: openingOf(`past-${i}`),
    laneId: `lane-${i}`,
    chartist: "Mila",
    entries: Array.from({ length: entryCount }, (_, n) => entryOf(`past-${i}`, n + 1)),
    sealed: i % 2 === 0,
    over: true,
    openedMs: 1_759_570_000_000,
    tallies: [{ playerId: "player-a", version: "1", tally: { i } }],
  });

  it("[DB10, DB13] writes the log that charting would have written", async () => {
    await days.importMatches({ ...ACADEMY, matches: [imported(1, 5), imported(2, 5)] });
    const read = async (matchId: string) => {
      const page = await log.read({ ...ACADEMY, matchId, after: 0, limit: 100 });
      return page.ok ? page.value : { entries: [], head: -1 };
    };
    const one = await read("past-1");
    const view = foldLog(one.entries);
    expect(view.ok && view.value.points).toHaveLength(5);
    expect(view.ok && view.value.setAside).toEqual([]);
    expect(one.head).toBe(6);
    const two = await read("past-2");
    expect(two.entries.map(({ pos, laneId, epoch }) => [pos, laneId, epoch]).at(-1)).toEqual([7, "desk", 0]);
    expect(await days.matchCard({ ...ACADEMY, matchId: "past-1" })).toMatchObject({ stage: "over" });
    expect(await days.matchCard({ ...ACADEMY, matchId: "past-2" })).toMatchObject({ stage: "sealed" });
    const lane = laneOf("curlew", "past-1", "lane-1");
    expect(await log.openLane(lane)).toEqual({ ok: false, error: { code: "other_owner" } });
    const again = await log.append({ ...lane, items: [{ n: 5, entry: entryOf("past-1", 5) }] });
    expect(again).toMatchObject({ value: { kind: "duplicate", upTo: 5 } });
    expect(await log.appendDesk({ ...lane, body: { kind: "PointReplayed" } })).toMatchObject({
      value: { upTo: 2, head: 7 },
    });
  });

  it("[DB13] leaves nothing of an import that fails", async () => {
    const before = await countRows(db, "curlew", "match");
    const wrong = { ...imported(4, 3), laneId: "desk" };
    await expect(days.importMatches({ ...ACADEMY, matches: [imported(3, 3), wrong] })).rejects.toMatchObject({
      code: "23505",
    });
    expect(await countRows(db, "curlew", "match")).toBe(before);
    expect(await log.head({ ...ACADEMY, matchId: "past-3" })).toMatchObject({ ok: false });
  });

  it("[DB13] brings in a season at once", async () => {
    const before = await countRows(db, "curlew", "entry");
    const matches = Array.from({ length: 60 }, (_, i) => imported(100 + i, 120));
    await days.importMatches({ ...ACADEMY, matches });
    expect((await countRows(db, "curlew", "entry")) - before).toBe(60 * 121 + 30);
  });
});

describe("an unreachable database", () => {
  it("[DB8] is told apart from every other error", async () => {
    const nowhere = openDb("postgres://nobody@127.0.0.1:1/nothing");
    const error = await createDayStore(nowhere)
      .listDays(ACADEMY)
      .catch((thrown: unknown) => thrown);
    expect(isUnavailable(error)).toBe(true);
    expect(isUnavailable(new Error("another"))).toBe(false);
    const wrong = await days
      .addPlayer({ ...ACADEMY, playerId: "player-a" } as never)
      .catch((thrown: unknown) => thrown);
    expect(wrong).toBeInstanceOf(Error);
    expect(isUnavailable(wrong)).toBe(false);
    await nowhere.close();
  });
});
