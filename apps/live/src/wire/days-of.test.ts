import { err, ok } from "@courtloom/core";
import type { DayStore as DatabaseDays, PlanVersion, TallyRow, WatchSettingVersion } from "@courtloom/db";
import { freezeWatch, STARTER_PLAN } from "@courtloom/decisions";
import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import type { MatchCard } from "../store.ts";
import { createMemoryStore } from "../testing/create-node.ts";
import { pointEntries } from "../testing/entries.ts";
import { createMatchDay } from "../testing/match-day.ts";
import { daysOf } from "./days-of.ts";
import type { WatchFreezer } from "./watch-freezer.ts";

const M1 = { academyId: "curlew", matchId: "m1" };
const row = (playerId: string, matchId: string, tally: unknown): TallyRow => ({
  matchId,
  playerId,
  playedOn: "2026-05-01",
  version: "1",
  tally,
});
const counts = (x: number, n: number) => ({
  version: 1,
  lineMissed: { x, n },
  lineShare: { x: n, n: n * 3 },
});

const planVersion = (over: Partial<PlanVersion>): PlanVersion => ({
  planId: "plan",
  playerId: null,
  version: 1,
  onVersion: 0,
  words: "own words",
  rules: [],
  replaces: [],
  leavesOut: [],
  ruleWords: { mine: "own words" },
  sentence: "own words",
  question: "own words",
  note: "own words",
  savedBy: "maren",
  savedByName: "Maren H.",
  savedMs: 0,
  ...over,
});

/** The database's functions, as far as they are called; what is written is kept. */
const database = (
  tallies: readonly TallyRow[],
  plans: readonly PlanVersion[] = [],
  settings: readonly WatchSettingVersion[] = [],
  freeze: WatchFreezer["freeze"] = async (designs) => ok(designs.map(freezeWatch)),
) => {
  const written: unknown[] = [];
  const faults: unknown[] = [];
  const card = createMatchDay(createMemoryStore(() => 0));
  const days = {
    academyTallies: async () => tallies,
    plans: async ({ playerIds = [] }: { readonly playerIds?: readonly string[] }) =>
      plans.filter(({ playerId }) => playerId === null || playerIds.includes(playerId)),
    watchSettings: async () => settings,
    setMatchOver: async (args: unknown) => void written.push(args),
    writeTally: async (args: unknown) => {
      written.push(args);
      return { ok: true, value: undefined };
    },
  } as unknown as DatabaseDays;
  const cardOf = async (): Promise<MatchCard> => {
    const found = await card.matchCard(M1);
    if (!found) throw new Error("the fixture has match m1");
    return found;
  };
  const fault = (...said: unknown[]) => void faults.push(said);
  const asked: string[] = [];
  const fits = { ask: (academyId: string) => void asked.push(academyId), version: async () => "7" };
  return {
    days: daysOf(days, { freezer: { freeze }, log: { fault }, fits }),
    written,
    cardOf,
    faults,
    asked,
  };
};

describe("the day's tables as the rooms use them", () => {
  it("[LV6] freezes the opening from the card and what was charted before, this match left out", async () => {
    const past = Array.from({ length: 20 }, (_, i) => row("m1-A", `old-${i}`, counts(4, 10)));
    const { days, cardOf } = database([
      ...past,
      row("m1-A", "m1", counts(10, 10)),
      row("x", "y", { version: 9 }),
    ]);
    const opened = await days.openingOf({ ...(await cardOf()), firstServer: null });
    expect(opened).toMatchObject({
      kind: "MatchOpened",
      matchId: "m1",
      firstServer: "A",
      players: { A: { playerId: "m1-A", hand: "right", own: true }, B: { own: false } },
      subjects: ["A"],
      coachingMode: "practice",
      usualRates: { A: { lineMissed: { source: "own" } }, B: {} },
    });
    expect(opened.usualRates?.A.lineMissed?.mean).toBeCloseTo(0.4, 2);
    expect(JSON.stringify(opened)).not.toContain("Noor");
  });

  it("[PL20] freezes the plan that holds for each own player, and the levels of that date", async () => {
    const mine = { id: "mine", when: { opponent: ["net"] }, aim: "free", lineOn: [], targets: [] } as const;
    const academys = planVersion({ playerId: null, version: 3, rules: STARTER_PLAN });
    const own = planVersion({
      playerId: "m1-A",
      planId: "plan-of-a",
      version: 2,
      rules: [mine],
      leavesOut: ["short-high"],
    });
    const visitors = planVersion({ playerId: "m1-B", planId: "plan-of-b" });
    const { days, cardOf } = database([], [academys, own, visitors]);
    const card = await cardOf();
    const players = { A: { ...card.players.A, level: 4 }, B: { ...card.players.B, level: null } };
    const opened = await days.openingOf({ ...card, players });
    const ids = ["mine", ...STARTER_PLAN.map(({ id }) => id).filter((id) => id !== "short-high")];
    expect(opened.plans?.B).toBeNull();
    expect(opened.plans?.A).toMatchObject({ planId: "plan-of-a", version: 5 });
    expect(opened.plans?.A?.rules.map(({ id }) => id)).toEqual(ids);
    expect(opened.planVersion).toBe("plan-of-a@5");
    expect(opened.players.A.level).toBe(4);
    expect(opened.players.B).not.toHaveProperty("level");
    expect(JSON.stringify(opened)).not.toContain("own words");
  });

  it("[PL20] freezes the academy's plan where the player has none, and none where there is neither", async () => {
    const academys = planVersion({ playerId: null, version: 3, rules: STARTER_PLAN });
    const withPlan = database([], [academys]);
    expect((await withPlan.days.openingOf(await withPlan.cardOf())).plans).toEqual({
      A: { planId: "plan", version: 3, rules: STARTER_PLAN },
      B: null,
    });
    const without = database([]);
    expect((await without.days.openingOf(await without.cardOf())).plans).toEqual({ A: null, B: null });
  });

  const PAST = Array.from({ length: 20 }, (_, i) => row("m1-A", `old-${i}`, counts(4, 10)));
  const setting = (playerId: string | null, choice: WatchSettingVersion["choice"]): WatchSettingVersion => ({
    ...{ playerId, version: 1, choice, savedBy: "maren", savedByName: "Maren H.", savedMs: 0 },
  });

  it("[WA16] freezes the watches that hold: by default line balls missed of the own player", async () => {
    const { days, cardOf, faults } = database(PAST);
    const { watches } = await days.openingOf(await cardOf());
    expect(watches).toMatchObject([{ side: "A", rate: "lineMissed", source: "own", horizon: 20 }]);
    expect(watches[0]?.alpha).toBeCloseTo(0.05, 12);
    expect(faults).toEqual([]);
  });

  it("[WA16] freezes what the academy chose, and before it what was chosen for the player", async () => {
    const academys = setting(null, { rates: ["lineShare"], alpha: 0.1, quiet: true });
    const own = setting("m1-A", { rates: ["lineMissed", "lineShare"], alpha: 0.02, quiet: false });
    const back = setting("m1-A", null);
    const ratesOf = async (...settings: WatchSettingVersion[]) => {
      const { days, cardOf } = database(PAST, [], settings);
      return (await days.openingOf(await cardOf())).watches.map(({ rate }) => rate);
    };
    expect(await ratesOf(academys)).toEqual(["lineShare"]);
    expect(await ratesOf(academys, own)).toEqual(["lineMissed", "lineShare"]);
    expect(await ratesOf(academys, back)).toEqual(["lineShare"]);
  });

  it("[WA14] a match whose watches were not worked out opens without them, and somebody must look", async () => {
    for (const why of ["failed", "late"] as const) {
      const { days, cardOf, faults } = database(PAST, [], [], async () => err(why));
      const opened = await days.openingOf(await cardOf());
      expect(opened).toMatchObject({ watches: [], usualRates: { A: { lineMissed: { source: "own" } } } });
      expect(faults).toEqual([[`a match was opened without watches: ${why}`, { matchId: "m1" }]]);
    }
    const stopping = database(PAST, [], [], async () => err("closed"));
    await expect(stopping.days.openingOf(await stopping.cardOf())).rejects.toThrow(/stopping/);
  });

  it("[LV6] a doubles match has its players by the log's own names, the server's pair first", async () => {
    const { days, cardOf } = database([]);
    const opened = await days.openingOf({ ...(await cardOf()), doubles: true, firstServer: "B" });
    expect(opened).toMatchObject({ doubles: true, subjects: [], doublesOrder: ["B1", "A1", "B2", "A2"] });
  });

  it("[LV12, HF12] writes that a match is over with the tally of each charted player, and that it is not", async () => {
    const { days, written, cardOf, asked } = database([]);
    const entries = pointEntries(1, 1, 8);
    const opening = await days.openingOf(await cardOf());
    const first = {
      v: 1,
      id: "00000000-0000-4000-8000-000000000000",
      n: 1,
      atMs: 0,
      wallMs: 0,
      body: opening,
    } as const;
    const log: LoggedEntry[] = [
      { pos: 1, laneId: "desk", epoch: 0, entry: first },
      ...entries.map((entry, i) => ({ pos: i + 2, laneId: "lane-1", epoch: 1, entry })),
    ];
    const view = foldLog(log);
    if (!view.ok) throw new Error(view.error);
    await days.settle(M1, view.value);
    expect(written).toEqual([{ ...M1, over: false }]);
    expect([opening.fitVersion, asked]).toEqual(["7", []]);
    written.length = 0;
    await days.settle(M1, { ...view.value, sealed: true });
    expect(asked).toEqual(["curlew"]);
    expect(written).toEqual([
      { ...M1, over: true },
      {
        ...M1,
        playerId: "m1-A",
        version: "2",
        tally: expect.objectContaining({
          version: 2,
          levels: {
            every: expect.objectContaining({
              counts: expect.objectContaining({ lineMissed: [0, 8], lineShare: [8, 8] }),
            }),
          },
        }),
      },
    ]);
  });
});
