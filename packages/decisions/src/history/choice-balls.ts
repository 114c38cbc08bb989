import type { Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import type { Choice } from "../balls/ball.ts";
import { isKept, isLineBall, isStroke } from "../balls/strokes.ts";
import { playedOf } from "../figures/played-of.ts";
import { choiceSituationAt } from "./choice-situation.ts";

/** A groundstroke that could go down the line, charted at every ball: kept, or sent down the line. */
export interface ChoiceBall {
  readonly pointId: string;
  /** Index of its point in the view. */
  readonly at: number;
  /** Place in `CHOICE_SITUATIONS`. */
  readonly situation: number;
  readonly choice: Choice;
  readonly isLine: boolean;
  /** Of its point; `undefined` where the net cord or a disputed call decided it. */
  readonly won: boolean | undefined;
  /** `undefined` where it is not judged right or wrong. */
  readonly offPlan: boolean | undefined;
}

/** A player's choices between the line and keeping the ball, in the order of play. SPEC HF11. */
export const choiceBalls = (view: MatchView, side: Side): readonly ChoiceBall[] => {
  const balls: ChoiceBall[] = [];
  for (const { side: whose, at, point } of playedOf(view)) {
    if (whose !== side || point.level !== "every") continue;
    for (const ball of point.balls) {
      const { choice, judgement } = ball;
      const situation = choiceSituationAt(ball.depth, ball.side, ball.incoming?.landing);
      if (choice === undefined || situation === undefined || !isStroke(ball)) continue;
      const isLine = isLineBall(ball);
      if (!isLine && !isKept(ball)) continue;
      const { verdict } = judgement;
      const isJudged = verdict === "onPlan" || verdict === "offPlan";
      const offPlan = isJudged ? verdict === "offPlan" : undefined;
      balls.push({ pointId: point.id, at, situation, choice, isLine, won: point.won, offPlan });
    }
  }
  return balls;
};
