import type { BallFacets, PlanRule } from "@courtloom/match-log";
import { FACET_VALUES, FACETS, type Facet, facetsFit, type KnownFacets } from "./facets-fit.ts";
import type { PlanProblem } from "./plan-problem.ts";

type WholeBall = { readonly [F in Facet]: (typeof FACET_VALUES)[F][number] };

const { depth, side, ballHeight, ballTime, opponent } = FACET_VALUES;

/** Every ball there can be, as far as rules can tell them apart: few enough to go through. */
const EVERY_BALL: readonly WholeBall[] = depth.flatMap((d) =>
  side.flatMap((s) =>
    ballHeight.flatMap((h) =>
      ballTime.flatMap((t) =>
        opponent.map((o) => ({ depth: d, side: s, ballHeight: h, ballTime: t, opponent: o })),
      ),
    ),
  ),
);

const fits = (facets: BallFacets, ball: KnownFacets): boolean => facetsFit(facets, ball) === "yes";

const takenBefore = (rules: readonly PlanRule[], place: number): readonly string[] | undefined => {
  const rule = rules[place];
  if (!rule) return undefined;
  const before = rules.slice(0, place);
  const by = new Set<string>();
  for (const ball of EVERY_BALL) {
    if (!fits(rule.when, ball)) continue;
    const taker = before.find(({ when }) => fits(when, ball));
    if (!taker) return undefined;
    by.add(taker.id);
  }
  return [...by];
};

/** Whether some ball can be both. A facet that only one of them names excludes nothing. */
const canMeet = (a: BallFacets, b: BallFacets): boolean =>
  FACETS.every((facet) => {
    const [ofA, ofB]: readonly (readonly string[] | undefined)[] = [a[facet], b[facet]];
    return ofA === undefined || ofB === undefined || ofA.some((value) => ofB.includes(value));
  });

const conditionProblems = (rule: PlanRule, place: number): PlanProblem[] => {
  const where = { rule: place, ruleId: rule.id };
  if (rule.aim !== "keep") {
    return rule.lineOn.length === 0 ? [] : [{ code: "condition_without_keep", ...where }];
  }
  return rule.lineOn.flatMap((condition, i) =>
    canMeet(rule.when, condition) ? [] : [{ code: "condition_never_fits" as const, ...where, condition: i }],
  );
};

/** What is wrong with rules that are each well-formed: said twice, or never of use. SPEC D19. */
export const ruleProblems = (rules: readonly PlanRule[]): readonly PlanProblem[] => {
  const ids = new Set<string>();
  return rules.flatMap((rule, place) => {
    const where = { rule: place, ruleId: rule.id };
    const problems: PlanProblem[] = conditionProblems(rule, place);
    if (ids.has(rule.id)) problems.unshift({ code: "duplicated_id", ...where });
    ids.add(rule.id);
    const by = takenBefore(rules, place);
    if (by) problems.push({ code: "never_fits", ...where, by });
    return problems;
  });
};
