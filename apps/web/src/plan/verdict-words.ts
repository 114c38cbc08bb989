import type { Because, Judgement, Verdict } from "@courtloom/decisions";
import type { PlanRule } from "@courtloom/match-log";
import { facetsSentence, missingSentence } from "./facet-words.ts";

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  onPlan: "On plan",
  offPlan: "Off plan",
  passedUp: "Passed up",
  open: "Open",
  unknown: "Can't tell",
};

type Say<C extends Because["code"]> = (
  because: Extract<Because, { code: C }>,
  rule: PlanRule | undefined,
  verdict: Verdict,
) => string;

const conditionWords = (rule: PlanRule | undefined, condition: number): string =>
  facetsSentence(rule?.lineOn[condition] ?? {}) || "any ball comes";

const SAYINGS: { readonly [C in Because["code"]]: Say<C> } = {
  noPlan: () => "There is no plan.",
  otherKind: () => "A plan speaks of balls from the ground alone.",
  noDirection: () => "It has no direction.",
  noRule: () => "No rule is for this ball.",
  ruleUnclear: ({ facets }) =>
    `This rule may be for it: nobody said ${missingSentence(facets)}. Answer that to know.`,
  free: () => "This rule leaves it to the player.",
  fromMiddle: () => "From the middle there is no line to take or to leave.",
  straight: () => "This rule wants it down the line, and it went there.",
  notStraight: () => "This rule wants it down the line, and it went elsewhere.",
  lineOn: ({ condition }, rule, verdict) =>
    `The line is on: ${conditionWords(rule, condition)}. ${
      verdict === "passedUp" ? "The ball was kept." : "The ball went down the line."
    }`,
  lineNotOn: (_, __, verdict) =>
    verdict === "offPlan"
      ? "The line is not on, and the ball went down the line."
      : "The line is not on, and the ball was kept.",
  lineUnclear: ({ facets }) =>
    `Whether the line is on depends on ${missingSentence(facets)}. Answer that to know.`,
};

/** Why a plan says what it says of a ball, in a sentence or two. */
export const whySentence = ({ because, verdict }: Judgement, rule: PlanRule | undefined): string => {
  const say = SAYINGS[because.code] as Say<Because["code"]>;
  return say(because, rule, verdict);
};
