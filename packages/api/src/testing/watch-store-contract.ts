import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { WatchChoice, WatchStore } from "../watch/watch-store.ts";

export interface WatchHarness {
  readonly store: WatchStore;
  readonly academyId: string;
  /** Another academy of the same store. */
  readonly otherId: string;
  /** Two own players of `academyId`, in the order of their ids, and one who is not the academy's. */
  readonly playerIds: readonly [string, string];
  readonly visitorId: string;
  /** A member of `academyId`. */
  readonly memberId: string;
  readonly memberName: string;
  readonly close: () => Promise<void>;
}

const CHOICE: WatchChoice = { rates: ["lineMissed", "passedUp"], alpha: 0.05, quiet: false };

/** What every store of watch settings must do; run by the one in memory and the one on disk. */
export const describeWatchStore = (name: string, open: () => Promise<WatchHarness>): void => {
  describe(name, () => {
    let at: WatchHarness;
    beforeAll(async () => {
      at = await open();
    }, 60_000);
    afterAll(async () => at?.close());

    const academys = (expected: number, choice: WatchChoice = CHOICE, savedBy = at.memberId) =>
      at.store.saveWatchSetting({ academyId: at.academyId, playerId: null, expected, choice, savedBy });
    const players = (playerId: string, expected: number, choice: WatchChoice | null = CHOICE) =>
      at.store.saveWatchSetting({
        academyId: at.academyId,
        playerId,
        expected,
        choice,
        savedBy: at.memberId,
      });
    const newest = async (playerIds?: readonly string[]) =>
      (await at.store.watchSettings({ academyId: at.academyId, ...(playerIds ? { playerIds } : {}) })).map(
        ({ playerId, version }) => [playerId, version],
      );

    it("[WA17] has none at first", async () => {
      expect(await at.store.watchSettings({ academyId: at.academyId })).toEqual([]);
    });

    it("[WA17] adds versions 1, 2 … of what was chosen, with who and when", async () => {
      const first = {
        playerId: null,
        version: 1,
        choice: CHOICE,
        savedBy: at.memberId,
        savedByName: at.memberName,
        savedMs: expect.any(Number),
      };
      expect(await academys(0)).toEqual({ ok: true, value: first });
      expect(await at.store.watchSettings({ academyId: at.academyId })).toEqual([first]);
      const second = await academys(1, { ...CHOICE, alpha: 0.1, quiet: true });
      expect(second).toMatchObject({ value: { version: 2, choice: { ...CHOICE, alpha: 0.1, quiet: true } } });
      expect(await newest()).toEqual([[null, 2]]);
    });

    it("[WA18] writes nothing over a version that somebody else saved, and says which that is", async () => {
      const stale = { ok: false, error: { code: "stale_watch", version: 2 } };
      expect(await academys(1)).toEqual(stale);
      expect(await academys(9)).toEqual(stale);
      expect(await newest()).toEqual([[null, 2]]);
    });

    it("[WA18] lets one of several savers at once through", async () => {
      const tries = await Promise.all(
        [0.02, 0.03, 0.04, 0.06, 0.07].map((alpha) => academys(2, { ...CHOICE, alpha })),
      );
      expect(tries.filter(({ ok }) => ok)).toHaveLength(1);
      expect(tries.filter((tried) => !tried.ok && tried.error.code === "stale_watch")).toHaveLength(4);
    });

    it("[WA18] takes the same choice sent again as the one that was saved", async () => {
      const sent = await academys(3, { ...CHOICE, quiet: true });
      expect(sent.ok).toBe(true);
      expect(await academys(3, { ...CHOICE, quiet: true })).toEqual(sent);
      expect(await academys(3, { ...CHOICE, quiet: true }, "another")).toMatchObject({
        error: { code: "stale_watch", version: 4 },
      });
    });

    it("[WA19] gives the newest of each, the academy's first; a player goes back to the academy's", async () => {
      const [one, two] = at.playerIds;
      await players(one, 0);
      await players(two, 0);
      expect(await players(one, 1, null)).toMatchObject({ value: { version: 2, choice: null } });
      expect(await newest()).toEqual([
        [null, 4],
        [one, 2],
        [two, 1],
      ]);
      expect(await newest([two])).toEqual([
        [null, 4],
        [two, 1],
      ]);
      expect(await newest([])).toEqual([[null, 4]]);
    });

    it("[WA19] is of own players only, and of one academy", async () => {
      const refused = { ok: false, error: { code: "unknown_player" } };
      for (const playerId of [at.visitorId, "nobody"]) expect(await players(playerId, 0)).toEqual(refused);
      expect(await at.store.watchSettings({ academyId: at.otherId })).toEqual([]);
      const [playerId] = at.playerIds;
      const foreign = { academyId: at.otherId, playerId, expected: 0, choice: CHOICE, savedBy: at.memberId };
      expect(await at.store.saveWatchSetting(foreign)).toEqual(refused);
    });
  });
};
