import type { Facet } from "./facets-fit.ts";

export const VERDICTS = ["onPlan", "offPlan", "passedUp", "open", "unknown"] as const;
/**
 * What a plan says of one choice: as agreed; not as agreed; kept although the line was on; nothing (the plan leaves
 * it to the player, or says nothing of it); or it cannot be told from what was charted.
 */
export type Verdict = (typeof VERDICTS)[number];

/**
 * Why, as data. `condition` and `conditions` are places in the rule's `lineOn`; `facets` are those that decided,
 * or, where it is unclear, those that nobody answered.
 */
export type Because =
  | { readonly code: "noPlan" }
  | { readonly code: "otherKind" }
  | { readonly code: "noDirection" }
  | { readonly code: "noRule" }
  | { readonly code: "ruleUnclear"; readonly facets: readonly Facet[] }
  | { readonly code: "free" }
  | { readonly code: "fromMiddle" }
  | { readonly code: "straight" }
  | { readonly code: "notStraight" }
  | { readonly code: "lineOn"; readonly condition: number; readonly facets: readonly Facet[] }
  | { readonly code: "lineNotOn" }
  | {
      readonly code: "lineUnclear";
      readonly conditions: readonly number[];
      readonly facets: readonly Facet[];
    };

export type BecauseCode = Because["code"];

/** A verdict with the rule that holds (or, where it is unclear, the first that might) and why. */
export interface Judgement {
  readonly verdict: Verdict;
  readonly ruleId: string | undefined;
  readonly because: Because;
}
