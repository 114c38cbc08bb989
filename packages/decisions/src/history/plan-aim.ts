import type { FrozenPlan, RuleAim } from "@courtloom/match-log";
import { facetsFit, type KnownFacets } from "../plan/facets-fit.ts";

/** What a plan aims at in a place; `depends`: on more than the place. */
export type PlanAim = RuleAim | "depends";

/** The aim of all rules that may hold for a ball of which so much is known; `undefined` where none may. SPEC HF14. */
export const planAimAt = (plan: Pick<FrozenPlan, "rules"> | null, ball: KnownFacets): PlanAim | undefined => {
  const aims = new Set<RuleAim>();
  for (const { when, aim } of plan?.rules ?? []) {
    const fit = facetsFit(when, ball);
    if (fit !== "no") aims.add(aim);
    if (fit === "yes") break;
  }
  const [only] = aims;
  return aims.size > 1 ? "depends" : only;
};
