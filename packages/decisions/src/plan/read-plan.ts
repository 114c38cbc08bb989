import type { FrozenPlan } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import { isShort, type Spot, spotOf } from "../balls/strokes.ts";
import { reach } from "../reach.ts";
import { facetsFit } from "./facets-fit.ts";
import { isJudgedKind, judgeBall, ruleFor } from "./judge-ball.ts";
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

const DEPTH = { behindBaseline: 0, insideBaseline: 1, insideServiceLine: 2 } as const;
const SIDE = { left: 0, middle: 1, right: 2 } as const;
const HEIGHT = { low: 0, netHigh: 1, sitsUp: 2, jumps: 3, unknown: 4 } as const;
const TIME = { set: 0, hurried: 1, stretched: 2, unknown: 3 } as const;
const OPPONENT = { set: 0, wideLeft: 1, wideRight: 2, deep: 3, net: 4, unknown: 5 } as const;
const CHOICE = { kept: 0, line: 1, cross: 2, middle: 3, fromMiddle: 4, unknown: 5 } as const;

/** A number of its own for all that a plan can tell apart in balls of a judged kind. */
const numberOf = ({ depth, side, ballHeight, ballTime, opponent, choice }: Ball): number =>
  ((((DEPTH[depth] * 3 + SIDE[side]) * 5 + HEIGHT[ballHeight ?? "unknown"]) * 4 +
    TIME[ballTime ?? "unknown"]) *
    6 +
    OPPONENT[opponent ?? "unknown"]) *
    6 +
  CHOICE[choice ?? "unknown"];

const read = (plan: FrozenPlan | null): PlanReading => {
  const byPlace = new Map<Spot, boolean>();
  const isToldByPlace = (ball: Ball): boolean =>
    reach(byPlace, spotOf(ball), () => {
      const { depth, side } = ball;
      return plan !== null && "aim" in ruleFor(plan.rules, { depth, side });
    });
  const judgements = new Map<number, Judgement>();
  const judge = (ball: Ball): Judgement =>
    plan && isJudgedKind(ball.kind)
      ? reach(judgements, numberOf(ball), () => judgeBall(plan, ball))
      : judgeBall(plan, ball);
  return {
    plan,
    judge,
    isSatUpOn: isSatUpOn(plan),
    isRuleAskedAlike: (ball) => isShort(ball) || isToldByPlace(ball),
  };
};

const WITHOUT_PLAN = read(null);
const readings = new WeakMap<FrozenPlan, PlanReading>();

/** A plan read for its balls. Balls that it cannot tell apart share one judgement; a frozen plan is read once. */
export const readPlan = (plan: FrozenPlan | null): PlanReading =>
  plan === null ? WITHOUT_PLAN : reach(readings, plan, () => read(plan));
