import type { BallFacets } from "@courtloom/match-log";
import { FACET_VALUES, FACETS, type Facet } from "./facets-fit.ts";
import type { PlanProblem } from "./plan-problem.ts";

/** Where in a plan something is said. */
export type Where = Pick<PlanProblem, "rule" | "ruleId" | "condition" | "target">;

const isFacet = (name: string): name is Facet => FACETS.some((facet) => facet === name);

const parseValues = <T extends string>(
  raw: unknown,
  known: readonly T[],
  problem: Omit<PlanProblem, "code">,
  problems: PlanProblem[],
): readonly T[] => {
  if (!Array.isArray(raw)) {
    problems.push({ code: "unknown_value", ...problem });
    return [];
  }
  if (raw.length === 0) problems.push({ code: "empty_facet", ...problem });
  if (raw.some((value) => !known.some((one) => one === value))) {
    problems.push({ code: "unknown_value", ...problem });
  }
  return known.filter((value) => raw.includes(value));
};

/** Which balls are meant, from anything; what is wrong is added to `problems`. Values come in their own order, once each. */
export const parseFacets = (raw: unknown, where: Where, problems: PlanProblem[]): BallFacets => {
  if (typeof raw !== "object" || raw === null || Array.isArray(raw)) {
    problems.push({ code: "bad_rule", ...where });
    return {};
  }
  const given: Readonly<Record<string, unknown>> = { ...raw };
  for (const name of Object.keys(given)) {
    if (!isFacet(name)) problems.push({ code: "unknown_facet", ...where, facet: name });
  }
  const valuesOf = <F extends Facet>(facet: F) => {
    if (given[facet] === undefined) return {};
    const known: readonly (typeof FACET_VALUES)[F][number][] = FACET_VALUES[facet];
    return { [facet]: parseValues(given[facet], known, { ...where, facet }, problems) };
  };
  return {
    ...valuesOf("depth"),
    ...valuesOf("side"),
    ...valuesOf("ballHeight"),
    ...valuesOf("ballTime"),
    ...valuesOf("opponent"),
  };
};
