import type { PlanContent } from "@courtloom/api";

/** Members in the order of their names, so that equal values have equal texts. */
const sorted = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== "object" || value === null) return value;
  const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(members.map(([name, member]) => [name, sorted(member)]));
};

/** Whether two values of plain data say the same. */
export const isSame = (a: unknown, b: unknown): boolean =>
  JSON.stringify(sorted(a)) === JSON.stringify(sorted(b));

/** Whether two plans say the same, their words compared without what surrounds them. */
export const isSameContent = (a: PlanContent, b: PlanContent): boolean => {
  const bare = ({ words, rules, replaces, leavesOut, ruleWords, sentence, question }: PlanContent) => ({
    words: words.trim(),
    sentence: sentence.trim(),
    question: question.trim(),
    rules,
    replaces,
    leavesOut,
    ruleWords: Object.fromEntries(Object.entries(ruleWords).map(([id, text]) => [id, text.trim()])),
  });
  return isSame(bare(a), bare(b));
};
