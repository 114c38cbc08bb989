import { describe, expect, it } from "vitest";
import { ask } from "../testing/ask.ts";
import { makeApi } from "../testing/make-api.ts";
import { seedDay } from "../testing/seed-day.ts";

const open = async () => {
  const api = await makeApi();
  const academyId = await api.setup();
  const { playerId } = await seedDay(api, academyId);
  const add = (matchId: string, ofPlayer: string, x: number, n: number) =>
    api.memory.rows.tallies.push({
      academyId,
      matchId,
      playerId: ofPlayer,
      tally: {
        version: 2,
        levels: { key: { counts: { lineMissed: [x, n], lineShare: [n, n * 4] }, cells: {} } },
      },
    });
  return { api, academyId, playerId, add, coach: api.callerAs("coach", academyId) };
};

const choice = (over: object = {}) => ({
  rates: ["lineMissed" as const],
  alpha: 0.05,
  quiet: false,
  ...over,
});
const reasonOf = (asked: Promise<unknown>) =>
  asked.then(
    () => "done",
    (error: { cause?: { reason?: string } }) => error.cause?.reason,
  );

describe("what is watched", () => {
  it("[WA21] is nobody's choice at first, with how much the academy has charted", async () => {
    const { coach, add, playerId } = await open();
    add("m1", playerId, 3, 40);
    add("m2", playerId, 5, 20);
    const file = await coach.watch.get();
    expect(file).toMatchObject({
      academy: null,
      needed: 100,
      charted: { lineMissed: 60, lineShare: 240, keptMissed: 0 },
      players: [
        { playerId, displayName: "Noor V.", setting: null, usual: { lineMissed: null, keptMissed: null } },
      ],
    });
    expect(file.players[0]?.usual.lineShare).toMatchObject({ n: 240, source: "own" });
  });

  it("[WA27] counts what staff found of alerts, a rate that nobody judged too", async () => {
    const { api, academyId, coach } = await open();
    api.memory.rows.judged.push({ academyId, rate: "passedUp", x: 2, n: 3 });
    const { judged } = await coach.watch.get();
    expect(judged).toMatchObject({ passedUp: { x: 2, n: 3 }, lineMissed: { x: 0, n: 0 } });
  });

  it("[WA21] tells what is usual for a player now, whose past that is and on how many", async () => {
    const { coach, add, playerId } = await open();
    for (let i = 0; i < 10; i += 1) add(`m${i}`, "somebody", 4, 20);
    const newcomer = (await coach.watch.get()).players[0]?.usual.lineMissed;
    expect(newcomer).toMatchObject({ n: 0, source: "academy" });
    expect(newcomer?.mean).toBeCloseTo(0.2, 1);
    for (let i = 0; i < 10; i += 1) add(`own${i}`, playerId, 8, 20);
    const known = (await coach.watch.get()).players[0]?.usual.lineMissed;
    expect(known).toMatchObject({ n: 200, source: "own" });
    expect(known?.mean).toBeGreaterThan(0.35);
    expect(known?.low).toBeLessThan(known?.mean ?? 0);
    expect(known?.high).toBeGreaterThan(known?.mean ?? 1);
  });

  it("[WA21] leaves out a tally that cannot be read", async () => {
    const { coach, api, academyId, playerId } = await open();
    api.memory.rows.tallies.push({ academyId, matchId: "m", playerId, tally: { version: 9 } });
    expect((await coach.watch.get()).charted.lineMissed).toBe(0);
  });

  it("[WA22] is saved by staff for everybody and for one player, in order, and noted with who did it", async () => {
    const { coach, api, academyId, playerId } = await open();
    const saved = await coach.watch.save({
      ...{ playerId: null, expected: 0 },
      choice: choice({ rates: ["passedUp", "lineMissed"], quiet: true }),
    });
    expect(saved).toMatchObject({ version: 1, choice: { rates: ["lineMissed", "passedUp"], quiet: true } });
    await coach.watch.save({ playerId, expected: 0, choice: choice({ alpha: 0.1 }) });
    await coach.watch.save({ playerId, expected: 1, choice: null });
    expect(await coach.watch.get()).toMatchObject({
      academy: { version: 1, savedByName: "Maren H." },
      players: [{ setting: { version: 2, choice: null } }],
    });
    const noted = api.memory.rows.audit.filter(({ action }) => action === "watch.save");
    expect(noted.map(({ subject }) => subject)).toEqual([academyId, playerId, playerId]);
  });

  it("[WA22] is not saved over what somebody else saved meanwhile", async () => {
    const { coach, api, academyId } = await open();
    await coach.watch.save({ playerId: null, expected: 0, choice: choice() });
    const other = api.callerAs("director", academyId);
    const late = other.watch.save({ playerId: null, expected: 0, choice: choice({ quiet: true }) });
    expect(await reasonOf(late)).toBe("stale_watch");
    expect((await coach.watch.get()).academy?.choice?.quiet).toBe(false);
    expect(
      await reasonOf(coach.watch.save({ playerId: crypto.randomUUID(), expected: 0, choice: null })),
    ).toBe("unknown_player");
  });

  it.each([
    ["choice.rates", choice({ rates: [] })],
    ["choice.rates", choice({ rates: ["lineMissed", "lineShare", "keptMissed", "lineOffPlan", "passedUp"] })],
    ["choice.rates", choice({ rates: ["lineMissed", "lineMissed"] })],
    ["choice.alpha", choice({ alpha: 0.3 })],
    ["choice.alpha", choice({ alpha: 0 })],
    ["choice.alpha", choice({ alpha: "often" })],
    ["choice", null],
  ])("[WA9] names the field that is wrong: %s of %j", async (field, wrong) => {
    const { api, academyId } = await open();
    const input = { playerId: null, expected: 0, choice: wrong };
    const response = await api.handlerAs("coach", academyId)(ask("watch.save", "mutation", input));
    expect(response.status).toBe(400);
    const body = (await response.json()) as { error: { data: { fields: Record<string, string> } } };
    expect(Object.keys(body.error.data.fields)).toEqual([field]);
    expect(Object.values(body.error.data.fields)[0]).toMatch(/Choose|Leave/);
    expect(await api.memory.store.watchSettings({ academyId })).toEqual([]);
  });
});
