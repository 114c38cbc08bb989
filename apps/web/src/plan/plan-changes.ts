import type { PlanContent } from "@courtloom/api";
import type { PlanRule } from "@courtloom/match-log";
import { ruleHeading } from "./facet-words.ts";
import { isSame } from "./same.ts";

const PARTS = [
  ["when", "the balls it is for"],
  ["aim", "what it wants"],
  ["lineOn", "when the line is on"],
  ["targets", "the targets"],
] as const satisfies readonly (readonly [keyof PlanRule, string])[];

const listWords = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;

const changedParts = (id: string, before: PlanContent, after: PlanContent, pair: readonly PlanRule[]) => {
  const [old, now] = pair;
  const parts: string[] = PARTS.filter(([part]) => !isSame(old?.[part], now?.[part])).map(
    ([, words]) => words,
  );
  return (before.ruleWords[id] ?? "") === (after.ruleWords[id] ?? "") ? parts : ["the words", ...parts];
};

type RuleList = "rules" | "replaces";

const ADDED: Readonly<Record<RuleList, string>> = { rules: "Added", replaces: "Changed for the player" };
const GONE: Readonly<Record<RuleList, string>> = { rules: "Taken out", replaces: "As the academy's again" };

const listChanges = (list: RuleList, before: PlanContent, after: PlanContent): string[] => {
  const oldOf = (id: string) => before[list].find((rule) => rule.id === id);
  const gone = before[list].filter(({ id }) => !after[list].some((rule) => rule.id === id));
  const changed = after[list].flatMap((rule) => {
    const old = oldOf(rule.id);
    if (!old) return [`${ADDED[list]}: ${ruleHeading(rule)}.`];
    const parts = changedParts(rule.id, before, after, [old, rule]);
    return parts.length === 0 ? [] : [`${ruleHeading(rule)}: ${listWords(parts)} changed.`];
  });
  return [...changed, ...gone.map((rule) => `${GONE[list]}: ${ruleHeading(rule)}.`)];
};

const isReordered = (before: PlanContent, after: PlanContent): boolean => {
  const ids = (of: PlanContent, other: PlanContent) =>
    of.rules.map(({ id }) => id).filter((id) => other.rules.some((rule) => rule.id === id));
  return !isSame(ids(before, after), ids(after, before));
};

const countWords = (n: number): string => (n === 1 ? "1 rule" : `${n} rules`);

const leftOutChanges = (before: PlanContent, after: PlanContent): string[] => {
  const more = after.leavesOut.filter((id) => !before.leavesOut.includes(id)).length;
  const fewer = before.leavesOut.filter((id) => !after.leavesOut.includes(id)).length;
  return [
    ...(more > 0 ? [`${countWords(more)} of the academy's left out.`] : []),
    ...(fewer > 0 ? [`${countWords(fewer)} of the academy's no longer left out.`] : []),
  ];
};

const SAID = [
  ["words", "The words of the plan changed."],
  ["sentence", "The sentence for the change of ends changed."],
  ["question", "The question for the change of ends changed."],
] as const;

/** What changed from one version of a plan to the next, a sentence each; empty when nothing did. */
export const planChanges = (before: PlanContent, after: PlanContent): readonly string[] => [
  ...SAID.flatMap(([part, sentence]) => (before[part].trim() === after[part].trim() ? [] : [sentence])),
  ...listChanges("rules", before, after),
  ...listChanges("replaces", before, after),
  ...leftOutChanges(before, after),
  ...(isReordered(before, after) ? ["The order of the rules changed."] : []),
];
