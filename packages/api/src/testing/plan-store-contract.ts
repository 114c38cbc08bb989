import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { NewPlanVersion, PlanStore } from "../plan/plan-store.ts";
import { samplePlan } from "./sample-plan.ts";

export interface PlanHarness {
  readonly store: PlanStore;
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

/** What every store of plans must do; run by the one in memory and the one on disk. */
export const describePlanStore = (name: string, open: () => Promise<PlanHarness>): void => {
  describe(name, () => {
    let at: PlanHarness;
    beforeAll(async () => {
      at = await open();
    }, 60_000);
    afterAll(async () => at?.close());

    const versionOf = (over: Partial<NewPlanVersion> = {}): NewPlanVersion => ({
      academyId: at.academyId,
      playerId: null,
      expected: 0,
      content: samplePlan(),
      note: "",
      savedBy: at.memberId,
      ...over,
    });
    const save = async (over: Partial<NewPlanVersion>) => {
      const saved = await at.store.savePlan(versionOf(over));
      if (!saved.ok) throw new Error(saved.error.code);
      return saved.value;
    };

    it("[DB50] has no plan at first", async () => {
      expect(await at.store.plans({ academyId: at.academyId })).toEqual([]);
      expect(await at.store.planVersions({ academyId: at.academyId, playerId: null })).toEqual([]);
    });

    it("[DB51] adds versions 1, 2 … of what was given, with who and when", async () => {
      const first = await save({ note: "Written before the season" });
      expect(first).toEqual({
        ...samplePlan(),
        planId: first.planId,
        playerId: null,
        version: 1,
        onVersion: 0,
        note: "Written before the season",
        savedBy: at.memberId,
        savedByName: at.memberName,
        savedMs: expect.any(Number),
      });
      const second = await save({ expected: 1, content: samplePlan("Build, then look."), savedBy: "gone" });
      expect(second).toMatchObject({ planId: first.planId, version: 2, savedBy: "gone", savedByName: null });
      expect(await at.store.planVersions({ academyId: at.academyId, playerId: null })).toEqual([
        second,
        first,
      ]);
    });

    it("[DB52] writes nothing over a version that somebody else saved, and says which that is", async () => {
      const stale = await at.store.savePlan(versionOf({ expected: 1, content: samplePlan("Mine.") }));
      expect(stale).toEqual({ ok: false, error: { code: "stale_plan", version: 2 } });
      const ahead = await at.store.savePlan(versionOf({ expected: 9 }));
      expect(ahead).toMatchObject({ error: { code: "stale_plan", version: 2 } });
      expect(await at.store.planVersions({ academyId: at.academyId, playerId: null })).toHaveLength(2);
    });

    it("[DB52] lets one of several savers at once through", async () => {
      const tries = await Promise.all(
        Array.from({ length: 5 }, (_, i) =>
          at.store.savePlan(versionOf({ expected: 2, content: samplePlan(`Saver ${i}.`) })),
        ),
      );
      expect(tries.filter(({ ok }) => ok)).toHaveLength(1);
      expect(tries.filter((tried) => !tried.ok && tried.error.code === "stale_plan")).toHaveLength(4);
    });

    it("[DB54] takes the same version sent again as the one that was saved", async () => {
      const content = samplePlan("Sent twice.");
      const sent = await save({ expected: 3, content });
      expect(await save({ expected: 3, content })).toEqual(sent);
      const other = await at.store.savePlan(versionOf({ expected: 3, content, savedBy: "another" }));
      expect(other).toMatchObject({ error: { code: "stale_plan" } });
    });

    it("[DB56] keeps the sentence and the question for a change of ends, and one that differs is another version", async () => {
      const content = { ...samplePlan("Sent twice."), sentence: "Build first.", question: "" };
      const asked = await at.store.savePlan(versionOf({ expected: 3, content }));
      expect(asked).toMatchObject({ error: { code: "stale_plan", version: 4 } });
      const [newest] = await at.store.planVersions({ academyId: at.academyId, playerId: null });
      expect(newest).toMatchObject({
        sentence: "Wait for the ball that sits up.",
        question: "Which ball would you change on?",
      });
    });

    it("[DB53] gives the newest of each, the academy's first; a player's knows what it was written over", async () => {
      const [one, two] = at.playerIds;
      const content = {
        ...samplePlan("For one."),
        rules: [],
        replaces: samplePlan().rules,
        leavesOut: ["x"],
      };
      await save({ playerId: one, content });
      const newest = await save({ playerId: one, expected: 1, content: { ...content, leavesOut: [] } });
      expect(newest).toMatchObject({ version: 2, onVersion: 4, replaces: samplePlan().rules, leavesOut: [] });
      await save({ playerId: two });
      const plans = async (playerIds?: readonly string[]) =>
        (await at.store.plans({ academyId: at.academyId, ...(playerIds ? { playerIds } : {}) })).map(
          ({ playerId, version }) => [playerId, version],
        );
      expect(await plans()).toEqual([
        [null, 4],
        [one, 2],
        [two, 1],
      ]);
      expect(await plans([two])).toEqual([
        [null, 4],
        [two, 1],
      ]);
      expect(await plans([])).toEqual([[null, 4]]);
    });

    it("[DB55] is of own players only, and of one academy", async () => {
      for (const playerId of [at.visitorId, "nobody"]) {
        const refused = await at.store.savePlan(versionOf({ playerId }));
        expect(refused).toEqual({ ok: false, error: { code: "unknown_player" } });
      }
      expect(await at.store.plans({ academyId: at.otherId })).toEqual([]);
      const foreign = await at.store.savePlan(
        versionOf({ academyId: at.otherId, playerId: at.playerIds[0] }),
      );
      expect(foreign).toEqual({ ok: false, error: { code: "unknown_player" } });
    });
  });
};
