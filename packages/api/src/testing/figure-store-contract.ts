import type { LoggedEntry } from "@courtloom/match-log";
import type { Surface } from "@courtloom/tennis";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { FigureStore } from "../figures/figure-store.ts";

export interface ChartedFixture {
  readonly matchId: string;
  readonly playedOn: string;
  readonly surface?: Surface;
  /** On a day of that surface. */
  readonly daySurface?: Surface;
  /** The player's side. */
  readonly side: "A" | "B";
  readonly tallied: boolean;
}

export interface FigureHarness {
  readonly store: FigureStore;
  readonly addChoiceFit: (args: {
    readonly academyId: string;
    readonly fit: unknown;
  }) => Promise<{ readonly version: number } | undefined>;
  readonly academyId: string;
  /** Another academy of the same store. */
  readonly otherId: string;
  readonly playerId: string;
  readonly opponent: { readonly playerId: string; readonly displayName: string };
  /** Puts a match with a log of three entries, charted by "Dana H.", in this academy; answers its log. */
  readonly put: (match: ChartedFixture) => Promise<readonly LoggedEntry[]>;
  readonly close: () => Promise<void>;
}

/** What every store of charted matches and fits must do; run by the one in memory and the one on disk. */
export const describeFigureStore = (name: string, open: () => Promise<FigureHarness>): void => {
  describe(name, () => {
    let at: FigureHarness;
    beforeAll(async () => {
      at = await open();
    }, 60_000);
    afterAll(async () => at?.close());

    const charted = (limit = 10) => {
      const { academyId, playerId } = at;
      return at.store.chartedMatches({ academyId, playerId, limit });
    };

    it("[DB70, DB73] gives tallied matches alone, the latest first, with surface and head", async () => {
      expect(await charted()).toEqual([]);
      await at.put({ matchId: "m-1", playedOn: "2026-05-02", side: "A", tallied: true, surface: "clay" });
      await at.put({ matchId: "m-2", playedOn: "2026-05-16", side: "B", tallied: true });
      await at.put({ matchId: "m-3", playedOn: "2026-05-09", side: "A", tallied: true, daySurface: "grass" });
      await at.put({ matchId: "m-4", playedOn: "2026-05-09", side: "A", tallied: false });
      const rows = await charted();
      expect(
        rows.map(({ matchId, playedOn, side, surface, head }) => [matchId, playedOn, side, surface, head]),
      ).toEqual([
        ["m-2", "2026-05-16", "B", null, 3],
        ["m-3", "2026-05-09", "A", "grass", 3],
        ["m-1", "2026-05-02", "A", "clay", 3],
      ]);
      expect(rows.every(({ opponent }) => opponent.displayName === at.opponent.displayName)).toBe(true);
      expect(rows.every(({ opponent }) => opponent.playerId === at.opponent.playerId)).toBe(true);
      expect(rows[0]?.format.sets).toBe(3);
      expect((await charted(2)).map(({ matchId }) => matchId)).toEqual(["m-2", "m-3"]);
    });

    it("[DB71] gives whole logs in order with who charted, and none of what is not there", async () => {
      const log = await at.put({ matchId: "m-5", playedOn: "2026-04-01", side: "A", tallied: false });
      const { academyId } = at;
      const logs = await at.store.matchLogs({ academyId, matchIds: ["m-5", "gone", "m-1"] });
      expect(logs.map(({ matchId }) => matchId).sort()).toEqual(["m-1", "m-5"]);
      const own = logs.find(({ matchId }) => matchId === "m-5");
      expect(own?.entries.map(({ pos }) => pos)).toEqual([1, 2, 3]);
      expect(own?.entries.map(({ entry }) => entry)).toEqual(log.map(({ entry }) => entry));
      expect(own?.lanes).toContainEqual({ laneId: log[1]?.laneId, chartist: "Dana H." });
      expect(await at.store.matchLogs({ academyId, matchIds: [] })).toEqual([]);
    });

    it("[DB70, DB71] shows another academy nothing", async () => {
      const { otherId: academyId, playerId } = at;
      expect(await at.store.chartedMatches({ academyId, playerId, limit: 10 })).toEqual([]);
      expect(await at.store.matchLogs({ academyId, matchIds: ["m-1"] })).toEqual([]);
    });

    it("[DB72] counts the fits of each academy and gives them back as they were", async () => {
      const { academyId, otherId } = at;
      const fits = [1, 2].map((players) => ({ players, spread: { b: 0.25, a: [0.1, null] } }));
      expect(await at.store.choiceFit({ academyId })).toBeUndefined();
      for (const fit of fits) await at.addChoiceFit({ academyId, fit });
      expect(await at.addChoiceFit({ academyId: otherId, fit: { other: true } })).toEqual({ version: 1 });
      expect(await at.store.choiceFit({ academyId })).toEqual({
        version: 2,
        fittedMs: expect.any(Number),
        fit: fits[1],
      });
      expect(await at.store.choiceFit({ academyId, version: 1 })).toMatchObject({ version: 1, fit: fits[0] });
      expect(await at.store.choiceFit({ academyId, version: 9 })).toBeUndefined();
    });

    it("[DB72] writes each of several fits at once whole, or not", async () => {
      const { academyId } = at;
      const tried = await Promise.all(
        Array.from({ length: 4 }, (_, i) => at.addChoiceFit({ academyId, fit: { at: i } })),
      );
      const written = tried.flatMap((each) => each?.version ?? []);
      expect(written.length).toBeGreaterThan(0);
      expect(new Set(written).size).toBe(written.length);
      expect((await at.store.choiceFit({ academyId }))?.version).toBe(2 + written.length);
    });
  });
};
