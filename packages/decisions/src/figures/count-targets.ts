import type { PlanChoice } from "@courtloom/match-log";
import type { Choice } from "../balls/ball.ts";
import { isKept } from "../balls/strokes.ts";
import { isJudgedKind } from "../plan/judge-ball.ts";
import { attempt, type PlayerCounting } from "./counting.ts";
import type { PlayedPoint } from "./played-point.ts";

/** Whether a choice is the one that a target speaks of; a touch may be cross-court or middle. */
const isChoice = (choice: Choice, wanted: PlanChoice): boolean | undefined => {
  if (wanted === "kept") return isKept({ choice });
  if (choice === "kept" && (wanted === "cross" || wanted === "middle")) return undefined;
  return choice === wanted;
};

/** Adds a point's balls to the targets of the rules that hold for them. SPEC D35. */
export const countTargets = ({ targets, plan }: PlayerCounting, point: PlayedPoint): void => {
  if (targets.length === 0) return;
  for (const ball of point.balls) {
    const { kind, choice, judgement } = ball;
    if (choice === undefined || !isJudgedKind(kind) || judgement.because.code === "ruleUnclear") continue;
    if (!plan.isRuleAskedAlike(ball)) continue;
    for (const { ruleId, target, count } of targets) {
      if (ruleId !== judgement.ruleId) continue;
      const isNeverTold = point.level === "key" && (target.choice === "cross" || target.choice === "middle");
      const isHit = isNeverTold ? undefined : isChoice(choice, target.choice);
      if (isHit !== undefined) attempt(count, isHit, point.id);
    }
  }
};
