import { loadDemo } from "@courtloom/api";
import { freshDatabase } from "@courtloom/db/testing";
import { academyRate, readTally, usualRate } from "@courtloom/decisions";
import { DEMO_PLAYERS } from "@courtloom/demo";
import { RATES } from "@courtloom/match-log";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openStores, type Stores } from "./open-stores.ts";

const DATE = "2026-05-30";
const database = await freshDatabase();
let stores: Stores;

const load = (importMatches: Stores["days"]["importMatches"]) =>
  loadDemo({
    store: { ...stores.days, importMatches },
    createAccount: stores.auth.createAccount,
    date: DATE,
    onProgress: () => undefined,
  });

describe("loading the demonstration", () => {
  beforeAll(() => {
    stores = openStores(database);
  });
  afterAll(async () => {
    await stores.close();
    await database.drop();
  });

  it("[DM6] goes on where it was cut short, and writes nothing twice", { timeout: 120_000 }, async () => {
    let batches = 0;
    const cutShort: Stores["days"]["importMatches"] = async (args) => {
      batches += 1;
      if (batches === 4) throw new Error("cut short");
      await stores.days.importMatches(args);
    };
    await expect(load(cutShort)).rejects.toThrow("cut short");
    const { academyId, dayId } = await load(stores.days.importMatches);

    const players = await stores.days.listPlayers({ academyId, ownOnly: true });
    expect(players.map((p) => p.displayName).sort()).toEqual(DEMO_PLAYERS.map((p) => p.displayName).sort());
    const members = await stores.days.listMembers({ academyId });
    expect(members.map((m) => m.role).sort()).toEqual(["coach", "coach", "director"]);
    const tallies = await stores.days.academyTallies({ academyId });
    expect(new Set(tallies.map((t) => `${t.matchId} ${t.playerId}`)).size).toBe(tallies.length);
    for (const { playerId } of players) {
      expect((await stores.days.playerHistory({ academyId, playerId })).length).toBeGreaterThanOrEqual(10);
    }
    const board = await stores.days.dayBoard({ academyId, dayId });
    expect(board?.courts.map((court) => court.current?.stage)).toEqual(Array(8).fill("waiting"));
  });

  it("[DM9] has charted enough of every rate that its matches watch each own player", async () => {
    const { academyId } = await load(stores.days.importMatches);
    const read = (await stores.days.academyTallies({ academyId })).flatMap(({ playerId, tally }) => {
      const known = readTally(tally);
      return known.ok ? [{ playerId, tally: known.value }] : [];
    });
    const all = read.map(({ tally }) => tally);
    for (const rate of RATES) expect(academyRate(rate, all).mean, rate).toBeDefined();
    for (const { playerId } of await stores.days.listPlayers({ academyId, ownOnly: true })) {
      const own = read.filter((row) => row.playerId === playerId).map(({ tally }) => tally);
      expect(usualRate("lineMissed", own, all)).toMatchObject({ source: "own" });
    }
  });

  it("[DM6] a second call changes nothing, and another date gets its own day", {
    timeout: 60_000,
  }, async () => {
    const first = await load(stores.days.importMatches);
    expect(await load(stores.days.importMatches)).toEqual(first);
    expect(await stores.days.listDays(first)).toHaveLength(1);
    const next = await loadDemo({
      store: stores.days,
      createAccount: stores.auth.createAccount,
      date: "2026-05-31",
      onProgress: () => undefined,
    });
    expect(next.dayId).not.toBe(first.dayId);
  });
});
