import type { Ball } from "../balls/ball.ts";
import { isLineBall, isShort, isStroke } from "../balls/strokes.ts";

export const BALL_CLASSES = ["any", "stroke", "line", "judged", "short"] as const;
/**
 * Balls that a figure is about, so that each ball is shown only to the figures that it may concern: all; groundstrokes
 * whose choice is known; line balls; balls on plan, off plan or passed up; short balls whose height somebody answered.
 */
export type BallClass = (typeof BALL_CLASSES)[number];

export const isOfClass = (ball: Ball, of: BallClass): boolean => {
  switch (of) {
    case "any":
      return true;
    case "stroke":
      return isStroke(ball);
    case "line":
      return isLineBall(ball);
    case "judged":
      return ball.judgement.verdict !== "open" && ball.judgement.verdict !== "unknown";
    case "short":
      return ball.ballHeight !== undefined && isShort(ball);
  }
};
