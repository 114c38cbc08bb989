import { type PlanProblem, parsePlanRules, planProblemText } from "@courtloom/decisions";
import type { PlanRule } from "@courtloom/match-log";
import { contentOf, holdingRules, type PlanDraft } from "./plan-draft.ts";

/** What keeps a plan from being saved, by the rule's id; "" for what is about no single rule. */
export type RuleProblems = Readonly<Record<string, readonly string[]>>;

const problemsIn = (rules: readonly PlanRule[]): readonly PlanProblem[] => {
  const parsed = parsePlanRules(rules);
  return parsed.ok ? [] : parsed.error;
};

const placeWords = ({ condition, target }: PlanProblem): string => {
  if (condition !== undefined) return `Condition ${condition + 1}: `;
  return target === undefined ? "" : `Target ${target + 1}: `;
};

const byRule = (rules: readonly PlanRule[], problems: readonly PlanProblem[]): RuleProblems => {
  const found: Record<string, string[]> = {};
  for (const problem of problems) {
    const id = problem.rule === undefined ? "" : (rules[problem.rule]?.id ?? "");
    found[id] = [...(found[id] ?? []), placeWords(problem) + planProblemText(problem)];
  }
  return found;
};

/** The same that the server refuses, before it is sent. */
export const problemsOf = (draft: PlanDraft): RuleProblems => {
  const { rules, replaces } = contentOf(draft);
  const ofReplaced = replaces.map((rule) => byRule([rule], problemsIn([rule])));
  return Object.assign({}, ...ofReplaced, byRule(rules, problemsIn(rules)));
};

/** Ids of rules that never hold because those before them take all their balls; a player's plan may want that. */
export const neverHeld = (draft: PlanDraft): ReadonlySet<string> => {
  const rules = holdingRules(draft).map(({ rule }) => rule);
  const never = problemsIn(rules).filter(({ code }) => code === "never_fits");
  return new Set(never.flatMap(({ ruleId }) => (ruleId === undefined ? [] : [ruleId])));
};

/** What the server refused by the places of fields such as `rules.0.targets.1`, by the rule's id. */
export const refusedByRule = (draft: PlanDraft, fields: Readonly<Record<string, string>>): RuleProblems => {
  const content = contentOf(draft);
  const found: Record<string, string[]> = {};
  for (const [path, sentence] of Object.entries(fields)) {
    const [list, place = ""] = path.split(".");
    const rules = list === "rules" || list === "replaces" ? content[list] : [];
    const id = list === "ruleWords" ? place : (rules[Number(place)]?.id ?? "");
    found[id] = [...(found[id] ?? []), sentence];
  }
  return found;
};
