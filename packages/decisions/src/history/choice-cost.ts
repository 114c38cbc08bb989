import { type OffPlan, pointsLost } from "@courtloom/stats";
import type { AcademyFit } from "./academy-fit.ts";
import type { ChoiceBall } from "./choice-balls.ts";
import { CHOICE_SITUATIONS } from "./choice-situation.ts";
import type { EstimateRow } from "./line-spot.ts";
import { toEstimateRow } from "./line-spots.ts";
import { fitPlayer } from "./player-fit.ts";

/** A choice with how much of the match rested on its point, in [0, 1]; 0 where that cannot be told. */
export interface WeighedChoice extends ChoiceBall {
  readonly importance: number;
}

export interface CostOfChoices {
  /** Balls off the plan, of those judged right or wrong. */
  readonly offPlan: number;
  readonly judged: number;
  /** Null without a fit, and where no ball is off the plan. */
  readonly points: EstimateRow | null;
  /** In matches: each ball by the importance of its point. */
  readonly matchChances: EstimateRow | null;
}

/** A line ball off the plan stands against the kept one, a kept ball that was to go straight against the line. */
const offPlanBy = (
  balls: readonly WeighedChoice[],
  weight: (ball: WeighedChoice) => number,
): readonly OffPlan[] => {
  const sums = CHOICE_SITUATIONS.map(() => 0);
  for (const ball of balls) {
    if (ball.offPlan)
      sums[ball.situation] = (sums[ball.situation] ?? 0) + (ball.isLine ? weight(ball) : -weight(ball));
  }
  return sums.map((count) => ({ planned: 0, count }));
};

/** What choices off the plan went with, in points and in chances to win the match. SPEC HF16. */
export const costOfChoices = (
  academy: AcademyFit | undefined,
  balls: readonly WeighedChoice[],
): CostOfChoices => {
  const judged = balls.filter(({ offPlan }) => offPlan !== undefined);
  const offPlan = judged.filter((ball) => ball.offPlan).length;
  if (!academy || offPlan === 0) return { offPlan, judged: judged.length, points: null, matchChances: null };
  const { fit, choicesPerPoint } = fitPlayer(academy, balls);
  const lost = (weight: (ball: WeighedChoice) => number) =>
    toEstimateRow(pointsLost(fit, offPlanBy(judged, weight), choicesPerPoint));
  return {
    offPlan,
    judged: judged.length,
    points: lost(() => 1),
    matchChances: lost(({ importance }) => importance),
  };
};
