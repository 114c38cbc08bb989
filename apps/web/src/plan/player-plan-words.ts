import type { PlanSummary } from "@courtloom/api";

const some = (count: number, what: string): string[] => (count === 0 ? [] : [`${count} ${what}`]);

/** What a player's plan changes of the academy's: "1 own rule, 2 changed, 1 left out"; undefined when nothing. */
export const playerPlanWords = (plan: PlanSummary | null): string | undefined => {
  if (plan === null) return undefined;
  const { ruleCount, replacedCount, leftOutCount, words, hasCourtWords } = plan;
  const parts = [
    ...(words.trim() === "" && !hasCourtWords ? [] : ["own words"]),
    ...some(ruleCount, ruleCount === 1 ? "own rule" : "own rules"),
    ...some(replacedCount, "changed"),
    ...some(leftOutCount, "left out"),
  ];
  return parts.length === 0 ? undefined : parts.join(", ");
};
