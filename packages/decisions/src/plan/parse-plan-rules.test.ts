import type { PlanRule } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { asksOfPlan } from "./asks-of-plan.ts";
import { parsePlanRules } from "./parse-plan-rules.ts";
import { PLAN_PROBLEMS, planProblemText } from "./plan-problem.ts";
import { STARTER_PLAN } from "./starter-plan.ts";

const rule = (changes: object = {}) => ({
  id: "r",
  when: {},
  aim: "keep",
  lineOn: [],
  targets: [],
  ...changes,
});
const target = (changes: object = {}) => ({
  choice: "kept",
  wants: "atLeast",
  share: 0.7,
  tolerance: 0.05,
  ...changes,
});
const problems = (...rules: unknown[]) => {
  const parsed = parsePlanRules(rules);
  return parsed.ok ? [] : parsed.error;
};
const codes = (...rules: unknown[]) => problems(...rules).map(({ code }) => code);

describe("rules of a plan", () => {
  it("[D18] the starter plan is one, and says what the academy's example says", () => {
    expect(parsePlanRules(JSON.parse(JSON.stringify(STARTER_PLAN)))).toEqual({
      ok: true,
      value: STARTER_PLAN,
    });
    expect(STARTER_PLAN.flatMap(({ targets }) => targets)).toContainEqual(target());
  });

  it("[D19] drops what a rule does not have and puts values in their order, once", () => {
    const parsed = parsePlanRules([rule({ colour: 1, when: { side: ["right", "left", "left"] } })]);
    expect(parsed).toEqual({ ok: true, value: [rule({ when: { side: ["left", "right"] } })] });
    expect(parsePlanRules([])).toEqual({ ok: true, value: [] });
  });

  it.each([
    ["bad_rule", "nonsense"],
    ["bad_rule", rule({ when: null })],
    ["bad_rule", rule({ lineOn: {} })],
    ["bad_id", rule({ id: "" })],
    ["bad_aim", rule({ aim: "win" })],
    ["unknown_facet", rule({ when: { wind: ["strong"] } })],
    ["empty_facet", rule({ when: { side: [] } })],
    ["unknown_value", rule({ when: { side: ["north"] } })],
    ["unknown_value", rule({ when: { side: "left" } })],
    ["condition_without_keep", rule({ aim: "free", lineOn: [{}] })],
    [
      "condition_never_fits",
      rule({ when: { depth: ["behindBaseline"] }, lineOn: [{ depth: ["insideBaseline"] }] }),
    ],
    ["bad_target", rule({ targets: [target({ choice: "volley" })] })],
    ["share_out_of_range", rule({ targets: [target({ share: 1.2 })] })],
    ["share_out_of_range", rule({ targets: [target({ share: "0.7" })] })],
    ["tolerance_out_of_range", rule({ targets: [target({ tolerance: 0.4 })] })],
    ["target_always_met", rule({ targets: [target({ share: 0.1, tolerance: 0.1 })] })],
    ["duplicated_target", rule({ targets: [target(), target({ share: 0.5 })] })],
    ["too_many", rule({ lineOn: Array.from({ length: 21 }, () => ({})) })],
  ] as const)("[D19] says %s and where", (code, raw) => {
    expect(problems(raw)).toMatchObject([{ code, rule: 0 }]);
  });

  it("[D19] finds what is wrong between rules", () => {
    expect(codes(rule({ when: { side: ["left"] } }), rule())).toEqual(["duplicated_id"]);
    const left = rule({ id: "left", when: { side: ["left", "middle"] } });
    const right = rule({ id: "right", when: { side: ["right"] } });
    const deep = rule({ id: "deep", when: { depth: ["behindBaseline"] } });
    expect(problems(left, right, deep)).toEqual([
      { code: "never_fits", rule: 2, ruleId: "deep", by: ["left", "right"] },
    ]);
    expect(problems(left, deep, right)).toEqual([]);
  });

  it("[D19] takes nothing but a list, and every code says what to do", () => {
    expect(parsePlanRules({})).toEqual({ ok: false, error: [{ code: "not_rules" }] });
    expect(codes(...Array.from({ length: 41 }, (_, i) => rule({ id: `r${i}` })))).toEqual(["too_many"]);
    for (const code of PLAN_PROBLEMS) expect(planProblemText({ code })).toMatch(/\. .+\.$/);
  });
});

describe("what a plan asks", () => {
  it("[D20] is what its rules and the short balls' figures need, no more", () => {
    expect(asksOfPlan(STARTER_PLAN)).toEqual({
      line: ["ballHeight", "opponent", "ballTime"],
      short: ["ballHeight", "cameIn"],
    });
    const plain: PlanRule = { id: "k", when: {}, aim: "keep", lineOn: [{ ballTime: ["set"] }], targets: [] };
    expect(asksOfPlan([plain])).toEqual({ line: ["ballTime"], short: ["ballHeight", "ballTime", "cameIn"] });
    expect(asksOfPlan([], { hesitated: true })).toEqual({
      line: ["hesitated"],
      short: ["ballHeight", "cameIn", "hesitated"],
    });
  });
});
