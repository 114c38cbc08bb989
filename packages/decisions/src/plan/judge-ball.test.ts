import type { FrozenPlan, PlanRule } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { type BallToJudge, judgeBall } from "./judge-ball.ts";
import { STARTER_PLAN } from "./starter-plan.ts";

const plan: FrozenPlan = { planId: "p1", version: 1, rules: STARTER_PLAN };
const ball = (changes: Partial<BallToJudge> = {}): BallToJudge => ({
  kind: "groundstroke",
  choice: "line",
  depth: "behindBaseline",
  side: "right",
  ...changes,
});
const verdict = (changes: Partial<BallToJudge>) => judgeBall(plan, ball(changes)).verdict;
/** Everything answered, nothing that makes the line on. */
const PLAIN = { ballHeight: "netHigh", ballTime: "hurried", opponent: "set" } as const;

describe("a verdict", () => {
  it("[D15] comes from the first rule that fits; without a plan, or where none fits, it is open", () => {
    expect(judgeBall(null, ball())).toEqual({
      verdict: "open",
      ruleId: undefined,
      because: { code: "noPlan" },
    });
    expect(verdict({ depth: "insideServiceLine", ballHeight: "netHigh" })).toBe("open");
    const narrow: PlanRule = { id: "n", when: { side: ["right"] }, aim: "straight", lineOn: [], targets: [] };
    const both = { rules: [narrow, ...STARTER_PLAN] };
    expect(judgeBall(both, ball()).ruleId).toBe("n");
    expect(judgeBall(both, ball({ side: "left" })).ruleId).toBe("behind-baseline");
  });

  it("[D15] is unknown where it cannot be told which rule holds, and says what to answer", () => {
    expect(judgeBall(plan, ball({ depth: "insideServiceLine" }))).toEqual({
      verdict: "unknown",
      ruleId: "short-low",
      because: { code: "ruleUnclear", facets: ["ballHeight"] },
    });
  });

  it.each([
    ["line", { ballHeight: "sitsUp" }, "onPlan"],
    ["line", PLAIN, "offPlan"],
    ["line", {}, "unknown"],
    ["line", { ballHeight: "low" }, "unknown"],
    ["cross", { opponent: "wideLeft" }, "passedUp"],
    ["kept", { ballHeight: "sitsUp" }, "passedUp"],
    ["middle", PLAIN, "onPlan"],
    ["kept", {}, "unknown"],
    [undefined, PLAIN, "unknown"],
  ] as const)("[D16] keep: %s with %o is %s", (choice, facets, expected) => {
    expect(verdict({ choice, ...facets })).toBe(expected);
  });

  it("[D16] names the condition that fits, or those that are open and what would tell", () => {
    expect(judgeBall(plan, ball({ opponent: "wideRight" })).because).toEqual({
      code: "lineOn",
      condition: 1,
      facets: ["opponent"],
    });
    expect(judgeBall(plan, ball({ depth: "insideBaseline", ballHeight: "low" })).because).toEqual({
      code: "lineUnclear",
      conditions: [1, 2],
      facets: ["ballTime", "opponent"],
    });
    const never = { rules: [{ id: "k", when: {}, aim: "keep", lineOn: [], targets: [] }] } as const;
    expect(judgeBall(never, ball())).toMatchObject({ verdict: "offPlan", because: { code: "lineNotOn" } });
  });

  it("[D17] straight is down the line, free is open", () => {
    const short = { depth: "insideServiceLine", ballHeight: "low" } as const;
    expect(verdict(short)).toBe("onPlan");
    expect(verdict({ ...short, choice: "cross" })).toBe("offPlan");
    expect(verdict({ ...short, choice: "kept" })).toBe("offPlan");
    expect(verdict({ ...short, kind: "approach" })).toBe("onPlan");
    expect(verdict({ ...short, ballHeight: "jumps", choice: undefined })).toBe("open");
  });

  it("[D17] from the middle there is no line, so nothing is judged", () => {
    for (const choice of ["middle", "fromMiddle", "kept"] as const) {
      expect(judgeBall(plan, ball({ side: "middle", choice, ...PLAIN }))).toMatchObject({
        verdict: "open",
        because: { code: "fromMiddle" },
      });
    }
  });

  it("[D13] other kinds of ball are open", () => {
    for (const kind of ["return", "passing", "volley", "overhead", "lob", "drop"] as const) {
      expect(judgeBall(plan, ball({ kind, ...PLAIN })).because).toEqual({ code: "otherKind" });
    }
  });

  it("[D14] a facet with all its values asks nothing", () => {
    const any = ["low", "netHigh", "sitsUp", "jumps"] as const;
    const rule: PlanRule = { id: "a", when: { ballHeight: any }, aim: "keep", lineOn: [], targets: [] };
    expect(judgeBall({ rules: [rule] }, ball()).verdict).toBe("offPlan");
  });
});
