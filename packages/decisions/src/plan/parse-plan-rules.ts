import { err, ok, type Result } from "@courtloom/core";
import { PLAN_CHOICES, type PlanRule, RULE_AIMS, type ShareTarget } from "@courtloom/match-log";
import { parseFacets, type Where } from "./parse-facets.ts";
import type { PlanProblem, PlanProblemCode } from "./plan-problem.ts";
import { ruleProblems } from "./rule-problems.ts";

const MOST_RULES = 40;
const MOST_CONDITIONS = 20;
const MOST_TARGETS = 10;
const MOST_TOLERANCE = 0.25;
const ID = /^[A-Za-z0-9-]{1,64}$/;

const isRecord = (raw: unknown): raw is Record<string, unknown> =>
  typeof raw === "object" && raw !== null && !Array.isArray(raw);

/** A list of at most so many members; otherwise says so and is empty. */
const listOf = (raw: unknown, most: number, where: Where, problems: PlanProblem[]): readonly unknown[] => {
  if (!Array.isArray(raw)) problems.push({ code: "bad_rule", ...where });
  else if (raw.length > most) problems.push({ code: "too_many", ...where });
  else return raw;
  return [];
};

const shareProblem = ({ wants, share, tolerance }: ShareTarget): PlanProblemCode | undefined => {
  if (!(share >= 0 && share <= 1)) return "share_out_of_range";
  if (!(tolerance >= 0 && tolerance <= MOST_TOLERANCE)) return "tolerance_out_of_range";
  const isAlwaysMet = wants === "atLeast" ? share - tolerance <= 0 : share + tolerance >= 1;
  return isAlwaysMet ? "target_always_met" : undefined;
};

const parseTarget = (raw: unknown, where: Where, problems: PlanProblem[]): ShareTarget[] => {
  const { choice, wants, share, tolerance } = isRecord(raw) ? raw : {};
  const named = PLAN_CHOICES.find((known) => known === choice);
  if (named === undefined || (wants !== "atLeast" && wants !== "atMost")) {
    problems.push({ code: "bad_target", ...where });
    return [];
  }
  const target = {
    choice: named,
    wants,
    share: typeof share === "number" ? share : Number.NaN,
    tolerance: typeof tolerance === "number" ? tolerance : Number.NaN,
  } as const;
  const code = shareProblem(target);
  if (code) problems.push({ code, ...where });
  return [target];
};

const parseTargets = (raw: unknown, where: Where, problems: PlanProblem[]): readonly ShareTarget[] => {
  const said = new Set<string>();
  return listOf(raw, MOST_TARGETS, where, problems).flatMap((each, target) => {
    const parsed = parseTarget(each, { ...where, target }, problems);
    for (const { choice, wants } of parsed) {
      if (said.has(`${choice} ${wants}`)) problems.push({ code: "duplicated_target", ...where, target });
      said.add(`${choice} ${wants}`);
    }
    return parsed;
  });
};

const parseRule = (raw: unknown, rule: number, problems: PlanProblem[]): PlanRule[] => {
  if (!isRecord(raw)) {
    problems.push({ code: "bad_rule", rule });
    return [];
  }
  const { id, aim } = raw;
  const isId = typeof id === "string" && ID.test(id);
  const where: Where = isId ? { rule, ruleId: id } : { rule };
  if (!isId) problems.push({ code: "bad_id", ...where });
  const named = RULE_AIMS.find((known) => known === aim);
  if (named === undefined) problems.push({ code: "bad_aim", ...where });
  const when = parseFacets(raw.when, where, problems);
  const lineOn = listOf(raw.lineOn, MOST_CONDITIONS, where, problems).map((each, condition) =>
    parseFacets(each, { ...where, condition }, problems),
  );
  const targets = parseTargets(raw.targets, where, problems);
  return isId && named !== undefined ? [{ id, when, aim: named, lineOn, targets }] : [];
};

/**
 * Rules of a plan from anything. Every problem at once, in the order of the rules, each with its place and a code
 * that has a text saying what to do; members that a rule does not have are dropped. An empty list is a plan that
 * says nothing. SPEC D19.
 */
export const parsePlanRules = (raw: unknown): Result<readonly PlanRule[], readonly PlanProblem[]> => {
  if (!Array.isArray(raw)) return err([{ code: "not_rules" }]);
  if (raw.length > MOST_RULES) return err([{ code: "too_many" }]);
  const problems: PlanProblem[] = [];
  const rules = raw.flatMap((each, place) => parseRule(each, place, problems));
  // What rules mean together can be told only once each is right.
  if (problems.length === 0) problems.push(...ruleProblems(rules));
  return problems.length === 0 ? ok(rules) : err(problems);
};
