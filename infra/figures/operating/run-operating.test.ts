import { watchCourse, watchesOf } from "@courtloom/decisions";
import { foldLog, type Shot } from "@courtloom/match-log";
import { makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";
import { sidakSplit } from "@courtloom/stats";
import { describe, expect, it } from "vitest";
import { drawsOf } from "../draws.ts";
import { inThreads } from "../in-threads.ts";
import { runHere } from "../run-tasks.ts";
import { attemptsFrom, closeMatch, oneGame, ROOM } from "./charted-match.ts";
import type { Condition } from "./condition.ts";
import { conditionResult } from "./condition-result.ts";
import { simulateClearing } from "./simulate-clearing.ts";
import { createFreezeOnce, watchedPlayer } from "./watched-player.ts";

const SEED = 20261125;
const TABLE: Condition = { past: 0, watches: 1, attempts: "thirty", oddsRatios: [1, 2, 3] };

const simulated = async (condition: Condition, players: number, matchesEach: number) => {
  const tasks = [{ kind: "players", seed: SEED, condition, first: 0, count: players, matchesEach } as const];
  const [outcomes = []] = await runHere<"players">(tasks, "players");
  return conditionResult({ condition, players, matchesEach }, outcomes);
};

/** A ball of side A down the line, from the right corner. */
const line = (missed: boolean): Shot => ({
  striker: "A",
  from: { right: 300, away: -1200 },
  to: { right: 280, away: missed ? 1330 : 900 },
  result: missed ? "missed" : "winner",
  ...(missed ? { miss: "long" } : {}),
});

describe("matches that are played through a watch", () => {
  it("[OP1] are matches in progress with all of side A's balls charted, and ends changed in one of them only", () => {
    for (const view of [closeMatch(), oneGame()]) {
      expect(view.points).toHaveLength(2 * ROOM);
      expect(view.setAside).toEqual([]);
      expect(view.score.over).toBe(false);
    }
    expect(closeMatch().score.changesOfEnds).toBeGreaterThan(5);
    expect(oneGame().score.changesOfEnds).toBe(0);
  });

  it("[OP1] say what a match says that was drawn ball by ball", () => {
    const freeze = createFreezeOnce();
    const [only] = watchedPlayer({ ...TABLE, past: 5 }, drawsOf(SEED, "drawn"), freeze);
    expect(only).toBeDefined();
    if (!only) return;
    const draws = drawsOf(SEED, "events");
    const events = Array.from({ length: 30 }, () => draws() < 0.7);
    const kept: Shot = { striker: "A", from: { right: 300, away: -1200 } };
    const drawn = events.map((missed) =>
      pointTo(missed ? "B" : "A", {
        level: "every",
        serve: { outcome: "firstIn", faults: 0 },
        shots: [kept, line(missed)],
      }),
    );
    const view = foldLog(makeLog(drawn, openedWith({ watches: [only.watch] })));
    if (!view.ok) throw new Error(view.error);
    const [charted] = watchesOf(view.value);
    const played = watchCourse(closeMatch(), only.watch, attemptsFrom(events));
    expect(charted?.episodes).toHaveLength(1);
    expect(played.episodes).toHaveLength(1);
    expect(played.match).toEqual(charted?.match);
    expect(played.strength).toBe(charted?.strength);
    // One attempt in every second point there, one in every point here.
    const nth = (raisedBy: string | undefined, points: readonly { readonly id: string }[]): number =>
      points.findIndex(({ id }) => id === raisedBy);
    expect(nth(played.episodes[0]?.raisedBy, closeMatch().points)).toBe(
      2 * nth(charted?.episodes[0]?.raisedBy, view.value.points),
    );
  });

  it("[OP1, OP5] have watches that the product made: from the past, for thirty attempts, the error rate split", () => {
    const freeze = createFreezeOnce();
    const [fresh] = watchedPlayer(TABLE, drawsOf(SEED, "fresh"), freeze);
    expect(fresh?.watch).toMatchObject({ usual: 0.25, source: "academy", up: 60, down: 32, horizon: 30 });
    expect(fresh?.watch.red.first).toBe(501);
    const four = watchedPlayer({ ...TABLE, past: 5, watches: 4 }, drawsOf(SEED, "four"), freeze);
    expect(new Set(four.map(({ watch }) => watch.rate)).size).toBe(4);
    expect(new Set(four.map(({ trueRate }) => trueRate)).size).toBe(4);
    for (const { watch } of four) expect(watch.alpha).toBeCloseTo(sidakSplit(0.05, 4), 12);
    const [own] = watchedPlayer({ ...TABLE, past: 20, attempts: "own" }, drawsOf(SEED, "own"), freeze);
    expect(own?.watch).toMatchObject({ source: "own", horizon: 40 });
  });

  it("[OP2, OP3, OP4] raise falsely no more often than set, and as the recursion says, without a past", async () => {
    const [well, twice, thrice] = await simulated(TABLE, 450, 8);
    if (!well || !twice || !thrice) throw new Error("three series");
    expect(well.raised.mean - 1.96 * well.raised.se).toBeLessThanOrEqual(0.05);
    for (const series of [well, twice, thrice]) {
      expect(Math.abs(series.raised.mean - (series.exact?.mean ?? Number.NaN))).toBeLessThan(
        3 * series.ownSe,
      );
      expect(series.matches).toBe(3600);
    }
    expect(well.exact?.high).toBeGreaterThan(0.1);
    expect(Math.abs(twice.raised.mean - 0.26)).toBeLessThan(0.03 + 1.96 * twice.raised.se);
    expect(Math.abs(thrice.raised.mean - 0.46)).toBeLessThan(0.03 + 1.96 * thrice.raised.se);
  });

  it("[OP2, OP3, OP4] and with twenty past matches", async () => {
    const [well, twice, thrice] = await simulated({ ...TABLE, past: 20 }, 60, 30);
    if (!well || !twice || !thrice) throw new Error("three series");
    expect(well.raised.mean - 1.96 * well.raised.se).toBeLessThanOrEqual(0.05);
    for (const series of [well, twice, thrice])
      expect(Math.abs(series.raised.mean - (series.exact?.mean ?? Number.NaN))).toBeLessThan(
        3 * series.ownSe,
      );
    expect(Math.abs(twice.raised.mean - 0.36)).toBeLessThan(0.03 + 1.96 * twice.raised.se);
    expect(Math.abs(thrice.raised.mean - 0.65)).toBeLessThan(0.03 + 1.96 * thrice.raised.se);
  });

  it("[OP5] raise falsely no more often with four watches than with one", async () => {
    const [well] = await simulated({ ...TABLE, watches: 4, oddsRatios: [1] }, 600, 5);
    if (!well) throw new Error("one series");
    expect(well.raised.mean).toBeGreaterThan(0.02);
    expect(well.raised.mean - 1.96 * well.raised.se).toBeLessThanOrEqual(0.05);
    expect(well.exact).toBeUndefined();
  });

  it("[OP6] seldom raise again what has just eased, and ease sooner when all is well", () => {
    for (const rate of [0.15, 0.25, 0.35]) {
      const { cleared, wrongly, again } = simulateClearing(rate, { seed: SEED, matches: 600 }, oneGame());
      expect(cleared).toBeGreaterThan(wrongly + 0.3);
      expect(again).toBeLessThan(0.04 + 1.96 * Math.sqrt((0.04 * 0.96) / 600));
    }
  });

  it("[OP1] are the same from one seed, whichever threads play them, and others from another", async () => {
    const tasks = (seed: number) =>
      [0, 3].map(
        (first) => ({ kind: "players", seed, condition: TABLE, first, count: 3, matchesEach: 5 }) as const,
      );
    const told: string[] = [];
    const run = inThreads((what) => (done, of) => told.push(`${what} ${done} of ${of}`));
    const threads = await run<"players">(tasks(SEED), "players");
    expect(threads).toEqual(await runHere<"players">(tasks(SEED), "players"));
    expect(threads).not.toEqual(await runHere<"players">(tasks(SEED + 1), "players"));
    expect(told).toEqual(["players 1 of 2", "players 2 of 2"]);
  });
});
