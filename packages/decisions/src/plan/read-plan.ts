import type { FrozenPlan } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import { isShort, type Spot, spotOf } from "../balls/strokes.ts";
import { facetsFit } from "./facets-fit.ts";
import { judgeBall, ruleFor } from "./judge-ball.ts";
import type { Judgement } from "./verdict.ts";

/** A plan read once for a whole match. */
export interface PlanReading {
  readonly plan: FrozenPlan | null;
  readonly judge: (ball: Ball) => Judgement;
  /** The plan says that a ball that sits up is on, whatever else. */
  readonly isSatUpOn: boolean;
  /**
   * Which rule holds for the ball does not hang on what is asked of line balls alone: its place tells it, or it is
   * a short ball, which is asked whatever its choice. SPEC D35.
   */
  readonly isRuleAskedAlike: (ball: Ball) => boolean;
}

const SAT_UP = { ballHeight: "sitsUp" } as const;

/** Some rule that a ball that sits up may be of keeps the ball and has the line on for any such ball. SPEC D28. */
const isSatUpOn = (plan: FrozenPlan | null): boolean =>
  plan?.rules.some(
    ({ aim, when, lineOn }) =>
      aim === "keep" &&
      facetsFit(when, SAT_UP) !== "no" &&
      lineOn.some((condition) => facetsFit(condition, SAT_UP) === "yes"),
  ) ?? false;

export const readPlan = (plan: FrozenPlan | null): PlanReading => {
  const byPlace = new Map<Spot, boolean>();
  const isToldByPlace = ({ depth, side }: Ball): boolean => {
    const spot = spotOf({ depth, side });
    const known = byPlace.get(spot);
    if (known !== undefined) return known;
    const told = plan !== null && "aim" in ruleFor(plan.rules, { depth, side });
    byPlace.set(spot, told);
    return told;
  };
  return {
    plan,
    judge: (ball) => judgeBall(plan, ball),
    isSatUpOn: isSatUpOn(plan),
    isRuleAskedAlike: (ball) => isShort(ball) || isToldByPlace(ball),
  };
};
