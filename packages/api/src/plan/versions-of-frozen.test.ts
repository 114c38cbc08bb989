import { describe, expect, it } from "vitest";
import { samplePlan } from "../testing/sample-plan.ts";
import type { PlanVersionRow } from "./plan-store.ts";
import { versionsOfFrozen } from "./versions-of-frozen.ts";

const row = (planId: string, version: number, onVersion = 0): PlanVersionRow => ({
  ...samplePlan(),
  planId,
  playerId: planId === "a" ? null : "noor",
  version,
  onVersion,
  note: "",
  savedBy: "maren",
  savedByName: "Maren H.",
  savedMs: 0,
});
const ACADEMY = [row("a", 3), row("a", 2), row("a", 1)];
/** The academy's 1, 2; the player's 1, 2; the academy's 3; the player's 3. */
const PLAYER = [row("p", 3, 3), row("p", 2, 2), row("p", 1, 2)];

describe("the words of a frozen plan", () => {
  it("[AP65] are those of the versions that held then, whichever of the two plans changed last", () => {
    const at = (planId: string, version: number) => {
      const { academy, player } = versionsOfFrozen({ planId, version, rules: [] }, ACADEMY, PLAYER);
      return [academy?.version, player?.version];
    };
    expect([3, 4, 5, 6].map((version) => at("p", version))).toEqual([
      [2, 1],
      [2, 2],
      [3, 2],
      [3, 3],
    ]);
    expect(at("a", 2)).toEqual([2, undefined]);
    expect(at("gone", 2)).toEqual([undefined, undefined]);
  });
});
