import type { ByPlayer, Side } from "@courtloom/core";
import type { ViewedPoint } from "@courtloom/match-log";
import type { Hand } from "@courtloom/tennis";
import type { Ball } from "../balls/ball.ts";
import { readBalls } from "../balls/read-balls.ts";
import type { PlanReading } from "../plan/read-plan.ts";
import type { PlayedPoint } from "./played-point.ts";

/** Strokes of the rally; unknown where nobody told the serve and no ball was charted. */
const strokesOf = ({ point: { level, serve, shots } }: ViewedPoint): number | undefined =>
  level === "every" && (serve !== undefined || shots.length > 0) ? shots.length + 1 : undefined;

/**
 * Chances that sat up and were passed up, as counted at key balls, when the plan says that such a ball is on; those
 * that a ball with its height stands for are not counted twice. SPEC D28.
 */
const satUpKept = ({ point, subjects }: ViewedPoint, side: Side, balls: readonly Ball[]): number => {
  if (point.level !== "key" || point.satUpKept === undefined || !subjects.includes(side)) return 0;
  const told = balls.filter(
    ({ ballHeight, judgement }) => ballHeight === "sitsUp" && judgement.verdict === "passedUp",
  );
  return Math.max(0, point.satUpKept - told.length);
};

/** A point as each of the given players played it; its shots are read once. */
export const playedPoints = (
  viewed: ViewedPoint,
  hands: ByPlayer<Hand>,
  plans: ByPlayer<PlanReading | undefined>,
  tell: (side: Side, point: PlayedPoint) => void,
): void => {
  const { point, server, id } = viewed;
  const balls = readBalls(viewed, hands, plans);
  const isDecidedOtherwise = point.shots.some(({ leftOut }) => leftOut !== undefined);
  const playedBy = (side: Side, plan: PlanReading): PlayedPoint => {
    const own = balls.filter(({ striker }) => striker === side);
    return {
      id,
      level: point.level,
      won: isDecidedOtherwise ? undefined : point.winner === side,
      isServing: server === side,
      serve: point.serve,
      strokes: strokesOf(viewed),
      balls: own,
      satUpKept: plan.isSatUpOn ? satUpKept(viewed, side, own) : 0,
      isSatUpOn: plan.isSatUpOn,
    };
  };
  if (plans.A) tell("A", playedBy("A", plans.A));
  if (plans.B) tell("B", playedBy("B", plans.B));
};
