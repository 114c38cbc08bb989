import { describe, expect, it } from "vitest";
import { SIXTY_POINTS } from "../testing/seed-history.ts";
import type { MatchLogRow } from "./figure-store.ts";
import { createHistoryCache } from "./history-cache.ts";

/** A store of one log, given to any match that is asked for; counts what it was asked. */
const storeOf = (points: number) => {
  const asked: string[] = [];
  const matchLogs = async ({
    matchIds,
  }: {
    readonly matchIds: readonly string[];
  }): Promise<MatchLogRow[]> => {
    asked.push(...matchIds);
    const entries = SIXTY_POINTS.log.slice(0, points + 1);
    return matchIds.map((matchId) => ({ matchId, entries, lanes: [] }));
  };
  return { matchLogs, asked };
};
const pointsOf = async (
  cache: ReturnType<typeof createHistoryCache>,
  store: ReturnType<typeof storeOf>,
  academyId: string,
  head: number,
) => (await cache.folded(store, academyId, [{ matchId: "m", head }])).get("m")?.view.points.length;

describe("matches folded for figures", () => {
  it("[HF7] are folded once, and again when their log is longer", async () => {
    const cache = createHistoryCache();
    const short = storeOf(20);
    expect(await pointsOf(cache, short, "curlew", 21)).toBe(20);
    expect(await pointsOf(cache, short, "curlew", 21)).toBe(20);
    expect(short.asked).toEqual(["m"]);
    expect(await pointsOf(cache, storeOf(30), "curlew", 31)).toBe(30);
  });

  it("[HF7] are each academy's own, also where two have a match of one id", async () => {
    const cache = createHistoryCache();
    await pointsOf(cache, storeOf(20), "curlew", 21);
    expect(await pointsOf(cache, storeOf(10), "heron", 11)).toBe(10);
    expect(await pointsOf(cache, storeOf(10), "curlew", 21)).toBe(20);
  });

  it("[HF7] are dropped, those first that were not asked for the longest, when there are too many points", async () => {
    const cache = createHistoryCache();
    const store = storeOf(60);
    const wanted = (from: number, count: number) =>
      Array.from({ length: count }, (_, i) => ({ matchId: `m${from + i}`, head: 61 }));
    await cache.folded(store, "curlew", wanted(0, 500));
    await cache.folded(store, "curlew", wanted(0, 1));
    await cache.folded(store, "curlew", wanted(500, 1));
    store.asked.length = 0;
    await cache.folded(store, "curlew", wanted(0, 1));
    expect(store.asked).toEqual([]);
    await cache.folded(store, "curlew", wanted(1, 1));
    expect(store.asked).toEqual(["m1"]);
  });
});
