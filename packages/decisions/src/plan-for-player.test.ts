import type { PlanRule } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { type PlanText, type PlayerPlanText, planForPlayer } from "./plan-for-player.ts";

const rule = (id: string, aim: PlanRule["aim"] = "keep"): PlanRule => ({
  id,
  when: {},
  aim,
  lineOn: [],
  targets: [],
});
const ACADEMY: PlanText = {
  planId: "plan-a",
  version: 4,
  words: "Build first.",
  ruleWords: { low: "Straight and in.", back: "Keep it." },
  rules: [rule("low", "straight"), rule("high", "free"), rule("back")],
  sentence: "Wait for it.",
  question: "Which ball?",
};
const PLAYER: PlayerPlanText = {
  planId: "plan-p",
  version: 2,
  words: "",
  ruleWords: { back: "Keep it, Noor.", mine: "Wait." },
  rules: [rule("mine")],
  replaces: [rule("back", "free")],
  leavesOut: ["high"],
  sentence: "",
  question: "What did you see, Noor?",
};

describe("the plan that holds for a player", () => {
  it("[PL3] is the academy's where the player has none, and none where there is neither", () => {
    expect(planForPlayer(ACADEMY, undefined)).toEqual({
      frozen: { planId: "plan-a", version: 4, rules: ACADEMY.rules },
      words: "Build first.",
      ruleWords: ACADEMY.ruleWords,
      sentence: "Wait for it.",
      question: "Which ball?",
      own: [],
      unplaced: [],
    });
    expect(planForPlayer(undefined, undefined)).toBeUndefined();
  });

  it("[PL3] has the player's added rules first, replaced ones in their place, and not those left out", () => {
    expect(planForPlayer(ACADEMY, PLAYER)).toEqual({
      frozen: {
        planId: "plan-p",
        version: 6,
        rules: [rule("mine"), rule("low", "straight"), rule("back", "free")],
      },
      words: "Build first.",
      ruleWords: { mine: "Wait.", low: "Straight and in.", back: "Keep it, Noor." },
      sentence: "Wait for it.",
      question: "What did you see, Noor?",
      own: ["mine", "back"],
      unplaced: [],
    });
  });

  it("[PL3] says which replaced rules have no place any more, and keeps every id once", () => {
    const academy = { ...ACADEMY, rules: [rule("low", "straight"), rule("mine", "free")] };
    const plan = planForPlayer(academy, { ...PLAYER, words: "Noor's own." });
    expect(plan?.unplaced).toEqual(["back"]);
    expect(plan?.frozen.rules.map(({ id }) => id)).toEqual(["mine", "low"]);
    expect(plan?.words).toBe("Noor's own.");
    expect(planForPlayer(undefined, PLAYER)).toMatchObject({
      frozen: { version: 2, rules: [{ id: "mine" }] },
      unplaced: ["back"],
    });
  });

  it("[PL3] gives another version whenever either plan changes", () => {
    const at = (academy: number, player: number) =>
      planForPlayer({ ...ACADEMY, version: academy }, { ...PLAYER, version: player })?.frozen.version;
    expect([at(4, 2), at(5, 2), at(5, 3)]).toEqual([6, 7, 8]);
  });
});
