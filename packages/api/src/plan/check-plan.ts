import { parsePlanRules, planProblemText } from "@courtloom/decisions";
import type { PlanRule } from "@courtloom/match-log";
import type { z } from "zod";

interface Rules {
  readonly rules: readonly PlanRule[];
  readonly replaces: readonly PlanRule[];
}

/** Names the field that each problem of the rules is about, such as `rules.0.lineOn.1.depth`. Rule AP61. */
const checkRules = (
  name: keyof Rules,
  rules: readonly PlanRule[],
  context: z.core.$RefinementCtx<unknown>,
): void => {
  const parsed = parsePlanRules(rules);
  if (parsed.ok) return;
  for (const problem of parsed.error) {
    const { rule, condition, target, facet } = problem;
    const path = [
      name,
      ...(rule === undefined ? [] : [rule]),
      ...(condition === undefined ? [] : ["lineOn", condition]),
      ...(target === undefined ? [] : ["targets", target]),
      ...(facet === undefined ? [] : [...(condition === undefined ? ["when"] : []), facet]),
    ];
    context.addIssue({ code: "custom", path, message: planProblemText(problem) });
  }
};

/** What rules mean together: each is of use, and each id is there once. */
export const checkPlan = ({ rules, replaces }: Rules, context: z.core.$RefinementCtx<unknown>): void => {
  checkRules("rules", rules, context);
  // Replaced rules stand among others, so that only each by itself can be judged here.
  for (const rule of replaces) checkRules("replaces", [rule], context);
  const ids = new Set(rules.map(({ id }) => id));
  if (replaces.some(({ id }) => ids.has(id)) || new Set(replaces.map(({ id }) => id)).size < replaces.length)
    context.addIssue({
      code: "custom",
      path: ["replaces"],
      message: planProblemText({ code: "duplicated_id" }),
    });
};
