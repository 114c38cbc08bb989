import type { Facet } from "./facets-fit.ts";

/** What keeps a plan's rules from being used, each with what to do about it. */
const TEXTS = {
  not_rules: "A plan is a list of rules. Send a list.",
  too_many: "That is more than a plan may hold. Take some out.",
  bad_rule:
    "A rule needs an id, the balls that it is for, an aim, conditions and targets. Fill in what is missing.",
  bad_id: "A rule's id is 1 to 64 letters, digits or hyphens. Change it.",
  duplicated_id: "Two rules have the same id. Give one of them another.",
  unknown_facet: "There is no such thing to ask of a ball. Choose depth, side, height, time or opponent.",
  empty_facet: "Nothing is ticked, so no ball would fit. Tick at least one, or leave the question out.",
  unknown_value: "That is not one of the answers to choose from. Choose one of them.",
  bad_aim: "A rule's aim is to keep, to go straight, or free. Choose one.",
  condition_without_keep:
    "Only a rule that keeps the ball says when the line is on. Take the conditions out or choose keep.",
  condition_never_fits:
    "No ball of this rule can fit that condition. Change the condition or the rule's balls.",
  bad_target: "A target names a choice and at least or at most. Choose both.",
  share_out_of_range: "A share is between 0 and 1. Change it.",
  tolerance_out_of_range:
    "A tolerance is from 0 to 0.25; more would call nearly anything kept to. Make it smaller.",
  target_always_met: "With that tolerance every share would do. Make it smaller or change the share.",
  duplicated_target: "Two targets of a rule speak of the same choice in the same way. Take one out.",
  never_fits:
    "Rules before it take all its balls, so it never holds. Move it up, narrow those, or take it out.",
} as const;

export type PlanProblemCode = keyof typeof TEXTS;
export const PLAN_PROBLEMS = Object.keys(TEXTS) as readonly PlanProblemCode[];

/** One problem and where it is. `rule`, `condition` and `target` are places from 0; absent where it is not of one. */
export interface PlanProblem {
  readonly code: PlanProblemCode;
  readonly rule?: number;
  /** The rule's id, where it has one. */
  readonly ruleId?: string;
  readonly condition?: number;
  readonly target?: number;
  readonly facet?: Facet | string;
  /** Of a rule that never fits: ids of those that take its balls. */
  readonly by?: readonly string[];
}

/** What is wrong and what to do, in a sentence or two. */
export const planProblemText = ({ code }: Pick<PlanProblem, "code">): string => TEXTS[code];
