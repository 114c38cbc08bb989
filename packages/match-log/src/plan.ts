import type { Channel, DepthStruck } from "@courtloom/tennis";
import type { BallHeight, BallTime, OpponentPlace } from "./shot.ts";

/**
 * Which balls are meant: each facet that is named must have one of its values, a facet that is absent may have
 * any. `side` is the channel that the ball was struck from, by the striker's own left and right. `{}` is every ball.
 */
export interface BallFacets {
  readonly depth?: readonly DepthStruck[];
  readonly side?: readonly Channel[];
  readonly ballHeight?: readonly BallHeight[];
  readonly ballTime?: readonly BallTime[];
  readonly opponent?: readonly OpponentPlace[];
}

export const PLAN_CHOICES = ["kept", "line", "cross", "middle", "fromMiddle"] as const;
/** What a target speaks of; `kept` is cross-court or middle, which a touch says too. */
export type PlanChoice = (typeof PLAN_CHOICES)[number];

/** A share of the balls of a rule that the plan wants, in [0, 1], and how far from it still counts as kept to. */
export interface ShareTarget {
  readonly choice: PlanChoice;
  readonly wants: "atLeast" | "atMost";
  readonly share: number;
  readonly tolerance: number;
}

export const RULE_AIMS = ["keep", "straight", "free"] as const;
/**
 * `keep`: the line only when it is on; `straight`: down the line; `free`: the player's own choice, which is never
 * off plan.
 */
export type RuleAim = (typeof RULE_AIMS)[number];

/** One rule of a plan. Of several that fit a ball the first holds. */
export interface PlanRule {
  /** Unique in its plan. */
  readonly id: string;
  readonly when: BallFacets;
  readonly aim: RuleAim;
  /** The line is on when any of these fits; empty with `keep`: never. */
  readonly lineOn: readonly BallFacets[];
  readonly targets: readonly ShareTarget[];
}

/** What of a plan the fold needs, frozen when the match opens; the coach's words stay outside the log. */
export interface FrozenPlan {
  readonly planId: string;
  /** Counts 1, 2, 3 … with each change of the plan. */
  readonly version: number;
  readonly rules: readonly PlanRule[];
}
