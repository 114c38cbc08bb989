import type { BallFacets, FrozenPlan, PlanChoice, PlanRule } from "@courtloom/match-log";
import type { StrokeKind } from "@courtloom/tennis";
import { FACETS, type Facet, facetsFit, type KnownFacets, unknownFacets } from "./facets-fit.ts";
import type { Because, Judgement, Verdict } from "./verdict.ts";

/** What a plan needs to know of a ball. A `Ball` is one; so is what somebody draws to try a plan. */
export interface BallToJudge extends KnownFacets {
  readonly kind: StrokeKind;
  readonly choice: PlanChoice | undefined;
}

/** Kinds that a plan speaks of: from the ground, the way in included. */
const JUDGED_KINDS: readonly StrokeKind[] = ["groundstroke", "approach"];

export const isJudgedKind = (kind: StrokeKind): boolean => JUDGED_KINDS.includes(kind);

const namedFacets = (facets: BallFacets): readonly Facet[] =>
  FACETS.filter((facet) => facets[facet] !== undefined);

/** What is said of every ball without a plan. */
export const NO_PLAN: Judgement = { verdict: "open", ruleId: undefined, because: { code: "noPlan" } };
const OTHER_KIND: Judgement = { verdict: "open", ruleId: undefined, because: { code: "otherKind" } };
const NO_RULE: Judgement = { verdict: "open", ruleId: undefined, because: { code: "noRule" } };

const judged = (verdict: Verdict, ruleId: string, because: Because): Judgement => ({
  verdict,
  ruleId,
  because,
});

/** Whether the line is on by a `keep` rule, and by which condition. Any condition that surely fits is enough. */
const lineOn = (rule: PlanRule, ball: KnownFacets): Because => {
  const unclear: number[] = [];
  for (const [i, condition] of rule.lineOn.entries()) {
    const fit = facetsFit(condition, ball);
    if (fit === "yes") return { code: "lineOn", condition: i, facets: namedFacets(condition) };
    if (fit === "unknown") unclear.push(i);
  }
  if (unclear.length === 0) return { code: "lineNotOn" };
  const missing = new Set(unclear.flatMap((i) => unknownFacets(rule.lineOn[i] ?? {}, ball)));
  return { code: "lineUnclear", conditions: unclear, facets: FACETS.filter((facet) => missing.has(facet)) };
};

const keepVerdict = (isLine: boolean, code: Because["code"]): Verdict => {
  if (code === "lineUnclear") return "unknown";
  if (code === "lineOn") return isLine ? "onPlan" : "passedUp";
  return isLine ? "offPlan" : "onPlan";
};

const judgeByRule = (rule: PlanRule, ball: BallToJudge): Judgement => {
  if (rule.aim === "free") return judged("open", rule.id, { code: "free" });
  // From the middle there is no line to take or to leave.
  if (ball.side === "middle" || ball.choice === "fromMiddle") {
    return judged("open", rule.id, { code: "fromMiddle" });
  }
  const isLine = ball.choice === "line";
  if (rule.aim === "straight") {
    return isLine
      ? judged("onPlan", rule.id, { code: "straight" })
      : judged("offPlan", rule.id, { code: "notStraight" });
  }
  const because = lineOn(rule, ball);
  return judged(keepVerdict(isLine, because.code), rule.id, because);
};

/** The rule that holds for a ball: the first that surely fits, if none before it might. SPEC D15. */
export const ruleFor = (rules: readonly PlanRule[], ball: KnownFacets): PlanRule | Judgement => {
  for (const rule of rules) {
    const fit = facetsFit(rule.when, ball);
    if (fit === "yes") return rule;
    if (fit === "unknown") {
      return judged("unknown", rule.id, { code: "ruleUnclear", facets: unknownFacets(rule.when, ball) });
    }
  }
  return NO_RULE;
};

/**
 * What a plan says of a choice, and why. Without a plan, of another kind of ball, or where no rule fits: open.
 * Where it cannot be told which rule holds, or whether the line was on: unknown. SPEC D13 to D17.
 */
export const judgeBall = (
  plan: Pick<FrozenPlan, "rules"> | null | undefined,
  ball: BallToJudge,
): Judgement => {
  if (!plan) return NO_PLAN;
  if (!isJudgedKind(ball.kind)) return OTHER_KIND;
  const found = ruleFor(plan.rules, ball);
  if ("verdict" in found) return found;
  if (ball.choice === undefined && found.aim !== "free") {
    return judged("unknown", found.id, { code: "noDirection" });
  }
  return judgeByRule(found, ball);
};
