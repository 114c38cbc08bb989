import { FIGURE_NAMES, fitAcademy, readTally, tallyCount } from "@courtloom/decisions";
import { describe, expect, it } from "vitest";
import { makeApi } from "../testing/make-api.ts";
import { seedDay } from "../testing/seed-day.ts";
import { type PastMatch, SIXTY_POINTS, seedHistory } from "../testing/seed-history.ts";

const read = readTally(SIXTY_POINTS.tally);
if (!read.ok) throw new Error(read.error);
const hand = read.value;

const SEASON: readonly PastMatch[] = [
  { playedOn: "2026-05-02", levels: [3, 3], surface: "clay", chartist: "Rosa T." },
  { playedOn: "2026-05-09", levels: [3, 1], surface: "hard", points: 46 },
  { playedOn: "2026-05-16", levels: [3, 5], points: 23 },
  { playedOn: "2026-05-23" },
];

const open = async (season: readonly PastMatch[] = SEASON) => {
  const api = await makeApi();
  const academyId = await api.setup();
  const ids = await seedDay(api, academyId);
  const matchIds = seedHistory(api, academyId, ids.matchId, season);
  const coach = api.callerAs("coach", academyId);
  const { playerId } = ids;
  const addFit = (times: number) =>
    api.memory.addChoiceFit({
      academyId,
      fit: fitAcademy(Array.from({ length: times }, () => ({ playerId, tally: hand }))),
    });
  return { api, academyId, ...ids, matchIds, coach, addFit };
};

describe("figures over a player's matches", () => {
  it("[HF1] of the match tallied by hand are what the hand found, each with the points it stands on", async () => {
    const { coach, playerId } = await open([{ playedOn: "2026-05-02" }]);
    const { figures } = await coach.figures.player({ playerId, filter: {} });
    expect(figures.map(({ id }) => id)).toEqual(FIGURE_NAMES);
    for (const { id, x, n, levels, matches } of figures) {
      expect({ id, x, n }).toEqual({ id, ...tallyCount(hand, id) });
      expect(matches).toBe(1);
      for (const told of levels) {
        const { x: ofLevel, n: all } = tallyCount(hand, id, { levels: [told.level] });
        expect({ id, ...told }).toEqual({ id, level: told.level, x: ofLevel, n: all });
      }
      const points = await coach.figures.points({ playerId, figureId: id, filter: {}, limit: 100 });
      expect([points.x, points.n, points.rows.length, points.next]).toEqual([x, n, n, null]);
      expect(points.rows.filter(({ hit }) => hit).length).toBe(x);
    }
  });

  it("[HF1] over several matches, and under any filter, are the sum of what the matches say", async () => {
    const { coach, playerId } = await open();
    const filters = [
      {},
      { level: "key" },
      { level: "every" },
      { opponent: "stronger" },
      { from: "2026-05-09" },
    ] as const;
    for (const filter of filters) {
      const whole = await coach.figures.player({ playerId, filter });
      const sums = FIGURE_NAMES.map(() => ({ x: 0, n: 0, matches: 0 }));
      for (const { playedOn } of whole.matches) {
        const one = await coach.figures.player({
          playerId,
          filter: { ...filter, from: playedOn, to: playedOn },
        });
        expect(one.matches).toHaveLength(1);
        for (const [i, sum] of sums.entries()) {
          sum.x += one.figures[i]?.x ?? 0;
          sum.n += one.figures[i]?.n ?? 0;
          sum.matches += one.figures[i]?.matches ?? 0;
        }
      }
      expect(whole.figures.map(({ x, n, matches }) => ({ x, n, matches }))).toEqual(sums);
      for (const { x, n, parts } of whole.figures) {
        if (parts.length === 0) continue;
        expect(
          parts.reduce((sum, part) => ({ x: sum.x + part.x, n: sum.n + part.n }), { x: 0, n: 0 }),
        ).toEqual({ x, n });
      }
    }
  });

  it("[HF2, HF5] never mix levels that they may not, and say what was left out", async () => {
    const { coach, playerId } = await open([{ playedOn: "2026-05-02" }]);
    const { figures } = await coach.figures.player({ playerId, filter: {} });
    const of = (id: string) => figures.find((figure) => figure.id === id);
    expect(of("rallyLength")?.levels.map(({ level }) => level)).toEqual(["every"]);
    expect(of("rallyLength")?.leftOut).toContainEqual({ why: "level", points: 37 });
    expect(of("lineMissed")?.leftOut).toEqual([
      { why: "level", points: 5 },
      { why: "netCord", points: 1 },
    ]);
    const key = await coach.figures.player({ playerId, filter: { level: "key" } });
    expect(key.figures.find(({ id }) => id === "rallyLength")).toMatchObject({
      n: 0,
      matches: 0,
      levels: [],
    });
  });

  it("[HF2] are filtered by period, surface, format, chartist and opponent, and offer what there is", async () => {
    const { coach, playerId } = await open();
    const on = async (filter: Parameters<typeof coach.figures.player>[0]["filter"]) =>
      (await coach.figures.player({ playerId, filter })).matches.map(({ playedOn }) => playedOn);
    const all = await coach.figures.player({ playerId, filter: {} });
    expect(all.choices).toMatchObject({
      first: "2026-05-02",
      last: "2026-05-23",
      opponents: ["similar", "stronger", "weaker", "notKnown"],
      surfaces: ["notKnown", "hard", "clay"],
      levels: ["score", "key", "every"],
      chartists: ["Dana H.", "Rosa T."],
    });
    expect([all.matchesInAll, all.onlyLatest, all.unreadable]).toEqual([4, null, 0]);
    expect(await on({})).toEqual(["2026-05-23", "2026-05-16", "2026-05-09", "2026-05-02"]);
    expect(await on({ from: "2026-05-09", to: "2026-05-16" })).toEqual(["2026-05-16", "2026-05-09"]);
    expect(await on({ surface: "clay" })).toEqual(["2026-05-02"]);
    expect(await on({ surface: "notKnown" })).toEqual(["2026-05-23", "2026-05-16"]);
    expect(await on({ chartist: "Rosa T." })).toEqual(["2026-05-02"]);
    expect(await on({ opponent: "weaker" })).toEqual(["2026-05-16"]);
    expect(await on({ level: "every" })).not.toContain("2026-05-16");
    expect(await on({ format: all.choices.formats[0] })).toHaveLength(4);
    expect(await on({ format: "another" })).toEqual([]);
    await expect(
      coach.figures.player({ playerId, filter: { from: "2026-05-09", to: "2026-05-01" } }),
    ).rejects.toThrow();
  });

  it("[HF3] tell opponents of another level apart, by the levels that the match froze", async () => {
    const { api, coach, playerId } = await open();
    api.memory.rows.players = api.memory.rows.players.map((player) => ({ ...player, level: 1 }));
    const { figures, matches } = await coach.figures.player({ playerId, filter: { opponent: "similar" } });
    expect(matches).toMatchObject([
      { opponentLevel: "similar", levelThen: 3, opponentLevelThen: 3, surface: "clay" },
    ]);
    const share = figures.find(({ id }) => id === "lineShare");
    expect(share).toMatchObject({
      x: 24,
      n: 80,
      byOpponent: { similar: { x: 24, n: 80 }, notKnown: { x: 24, n: 80 } },
    });
    expect(share?.byOpponent.weaker.n).toBeGreaterThan(0);
    expect(share?.byOpponent.weaker.n).toBeLessThan(80);
  });

  it("[HF4] stand beside what is usual, from all matches whatever the filter, once the academy has enough", async () => {
    const { coach, playerId, addFit } = await open();
    const share = async (filter: Parameters<typeof coach.figures.player>[0]["filter"]) =>
      (await coach.figures.player({ playerId, filter })).figures.find(({ id }) => id === "lineShare")?.usual;
    expect(await share({})).toBeNull();
    await addFit(1);
    expect(await share({})).toBeNull();
    await addFit(3);
    const usual = await share({});
    expect(usual?.source).toBe("own");
    expect(usual?.low).toBeLessThan(usual?.mean ?? 0);
    expect(usual?.high).toBeGreaterThan(usual?.mean ?? 1);
    expect(await share({ surface: "clay" })).toEqual(usual);
  });

  it("[HF6] leave out a match whose log cannot be folded, and say how many", async () => {
    const { api, coach, playerId, matchIds } = await open();
    api.memory.logs.put(matchIds[0] ?? "", SIXTY_POINTS.log.slice(1));
    const history = await coach.figures.player({ playerId, filter: {} });
    expect([history.matchesInAll, history.unreadable]).toEqual([3, 1]);
  });

  it("[HF7] follow a correction at once", async () => {
    const { api, coach, playerId, matchIds } = await open([{ playedOn: "2026-05-02" }]);
    const missed = async () =>
      (await coach.figures.player({ playerId, filter: {} })).figures.find(({ id }) => id === "lineMissed")?.n;
    expect(await missed()).toBe(24);
    const [matchId = ""] = matchIds;
    const log = api.memory.logs.logOf(matchId);
    const target = log.at(-1)?.entry.id ?? "";
    const entry = {
      v: 1,
      id: playerId,
      n: 61,
      atMs: 0,
      wallMs: 0,
      body: { kind: "EntryVoided", target },
    } as const;
    api.memory.logs.put(matchId, [...log, { pos: log.length + 1, laneId: "lane-1", epoch: 1, entry }]);
    expect(await missed()).toBe(23);
  });

  it("[HF10] are of own players alone", async () => {
    const { api, coach } = await open();
    const visitor = api.memory.rows.players.find(({ own }) => !own)?.playerId ?? "";
    for (const ask of [coach.figures.player, coach.figures.lineMap, coach.figures.cost])
      await expect(ask({ playerId: visitor, filter: {} })).rejects.toThrow(/no longer on the list/);
  });
});

describe("the points behind a figure", () => {
  it("[HF9] say when, against whom, at what score and what was struck, a page at a time", async () => {
    const { coach, playerId } = await open();
    const first = await coach.figures.points({
      playerId,
      figureId: "lineMissedOffPlan",
      filter: {},
      hits: true,
      limit: 4,
    });
    expect(first).toMatchObject({
      next: 4,
      rows: [{ playedOn: "2026-05-23", opponentName: "Visitor red", pointNo: 2, hit: true }, {}, {}, {}],
    });
    expect(first.rows[0]).toMatchObject({
      score: "0-0 15-0",
      isServing: true,
      level: "key",
      won: false,
      ball: {
        depth: "behindBaseline",
        side: "right",
        choice: "line",
        missed: true,
        ballHeight: "low",
        verdict: "offPlan",
      },
    });
    let from: number | null = first.next;
    const rows = [...first.rows];
    while (from !== null) {
      const page = await coach.figures.points({
        playerId,
        figureId: "lineMissedOffPlan",
        filter: {},
        hits: true,
        from,
        limit: 4,
      });
      rows.push(...page.rows);
      from = page.next;
    }
    expect(rows).toHaveLength(first.x);
    expect(new Set(rows.map(({ matchId, pointNo }) => `${matchId} ${pointNo}`)).size).toBe(first.x);
  });

  it("[HF9] are of one part where one is asked for", async () => {
    const { coach, playerId } = await open([{ playedOn: "2026-05-02" }]);
    const left = await coach.figures.points({
      playerId,
      figureId: "lineMissed",
      filter: {},
      part: "behindBaseline.left",
    });
    expect([left.x, left.n]).toEqual([3, 7]);
    expect(left.rows.every(({ ball }) => ball?.side === "left")).toBe(true);
  });
});

describe("where the line pays, and what off-plan choices went with", () => {
  it("[HF13, HF15] says six places with what was struck at every ball, and no worth before there is a fit", async () => {
    const { api, coach, playerId, academyId, addFit } = await open();
    await api.callerAs("director", academyId).plan.startFromStarter({});
    const bare = await coach.figures.lineMap({ playerId, filter: {} });
    expect(bare).toMatchObject({ fit: null, matches: 3, matchesLeftOut: 1 });
    expect(bare.spots.map(({ depth, side }) => `${depth} ${side}`)).toHaveLength(6);
    expect(bare.spots.every(({ verdict, worth }) => verdict === "cantTell" && worth === null)).toBe(true);
    await addFit(3);
    const { fit, spots } = await coach.figures.lineMap({ playerId, filter: {} });
    expect(fit).toMatchObject({ version: 1, players: 1, matches: 3, ownSpread: false });
    const right = spots.find(({ depth, side }) => depth === "behindBaseline" && side === "right");
    // Five line balls of each whole match behind the baseline from the right; of 46 points as well.
    expect(right).toMatchObject({ plan: "keep", line: { x: 6, n: 15 }, lineOffPlan: { x: 6 } });
    expect(right?.worth?.low).toBeLessThan(right?.worth?.value ?? -1);
    expect(spots.find(({ depth }) => depth === "insideServiceLine")?.plan).toBe("depends");
  });

  it("[HF16] gives points and match chances with intervals, or the counts alone", async () => {
    const { coach, playerId, addFit } = await open();
    const bare = await coach.figures.cost({ playerId, filter: {} });
    expect(bare).toMatchObject({ fit: null, points: null, matchChances: null, serve: { source: "default" } });
    expect(bare.offPlan).toBeGreaterThan(0);
    await addFit(4);
    const cost = await coach.figures.cost({ playerId, filter: {} });
    expect(cost).toMatchObject({
      offPlan: bare.offPlan,
      judged: bare.judged,
      matches: 3,
      serve: { source: "academy" },
    });
    for (const estimate of [cost.points, cost.matchChances]) {
      expect(estimate?.low).toBeLessThan(estimate?.value ?? Number.NaN);
      expect(estimate?.high).toBeGreaterThan(estimate?.value ?? Number.NaN);
    }
    expect(Math.abs(cost.matchChances?.value ?? 9)).toBeLessThan(Math.abs(cost.points?.value ?? 0));
  });
});

describe("one match's figures", () => {
  it("[HF17] are the hand's, with the size of every point and the biggest", async () => {
    const { coach, matchIds, addFit } = await open();
    await addFit(2);
    const match = await coach.figures.match({ matchId: matchIds[0] ?? "" });
    expect(match.figures.B).toBeNull();
    for (const { id, x, n } of match.figures.A ?? [])
      expect({ id, x, n }).toEqual({ id, ...tallyCount(hand, id) });
    expect(match.points).toHaveLength(60);
    const ranks = new Map(match.points.map(({ pointId, rank }) => [pointId, rank]));
    expect(match.biggest).toHaveLength(5);
    expect(ranks.get(match.biggest[0] ?? "")).toBe(1);
    expect(match.points.filter(({ step }) => step === "top5").length).toBeLessThanOrEqual(3);
    expect(match.cost.A).toMatchObject({ matches: 1, fit: { version: 1 } });
    expect(match.cost.B).toBeNull();
  });

  it("[HF17] keep to the fit that the match froze", async () => {
    const { coach, matchIds, addFit } = await open([{ playedOn: "2026-05-02", opened: { fitVersion: "1" } }]);
    await addFit(1);
    await addFit(9);
    const match = await coach.figures.match({ matchId: matchIds[0] ?? "" });
    expect(match.cost.A?.fit).toMatchObject({ version: 1, matches: 1 });
  });

  it("[HF17] of a match that waits are none yet", async () => {
    const { coach, matchId } = await open();
    expect(await coach.figures.match({ matchId })).toMatchObject({
      stage: "waiting",
      figures: { A: null, B: null },
      points: [],
      biggest: [],
    });
  });
});
