import type { Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import { isOfClass } from "./ball-class.ts";
import { playedOf } from "./played-of.ts";
import type { PlayedPoint } from "./played-point.ts";
import { FIGURES, type FigureName } from "./registry.ts";

/** One ball, point or moment that a figure counts, in the order of play. */
export interface FigureAttempt {
  /** Index in the view's points. */
  readonly at: number;
  /** It counts in x. */
  readonly event: boolean;
  /** Whether the choice was off plan; absent where it is not judged right or wrong. */
  readonly offPlan?: boolean;
}

const planOf = ({ judgement: { verdict } }: Ball): Pick<FigureAttempt, "offPlan"> =>
  verdict === "onPlan" || verdict === "offPlan" ? { offPlan: verdict === "offPlan" } : {};

/** Adds what `figure` counts in a point. Pushed one by one: every fold asks this of every point for every watch. */
const addAttempts = (to: FigureAttempt[], figure: FigureName, point: PlayedPoint, at: number): void => {
  const def = FIGURES[figure];
  if (!def.levels.includes(point.level)) return;
  if (def.unit === "points") {
    const event = def.hit(point);
    if (event !== undefined) to.push({ at, event });
    return;
  }
  for (const ball of point.balls) {
    const event = isOfClass(ball, def.of) ? def.hit(ball, point) : undefined;
    if (event !== undefined) to.push({ at, event, ...planOf(ball) });
  }
  if (def.unit === "balls") return;
  for (let i = def.counted(point); i > 0; i -= 1) to.push({ at, event: def.isCountedHit });
};

/** Whose figure is asked for. */
export interface FigureAsk {
  readonly side: Side;
  readonly figure: FigureName;
}

/**
 * What figures count, one by one in the order of play, in the order of `asks`; empty for a side without figures. Each
 * point is read once, however many are asked for. SPEC D37.
 */
export const attemptsOfEach = (
  view: MatchView,
  asks: readonly FigureAsk[],
): readonly (readonly FigureAttempt[])[] => {
  const told = asks.map(({ side, figure }) => ({ side, figure, attempts: [] as FigureAttempt[] }));
  for (const { side: whose, at, point } of playedOf(view)) {
    for (const { side, figure, attempts } of told)
      if (side === whose) addAttempts(attempts, figure, point, at);
  }
  return told.map(({ attempts }) => attempts);
};

/** The same for one figure. */
export const attemptsOf = (view: MatchView, side: Side, figure: FigureName): readonly FigureAttempt[] =>
  attemptsOfEach(view, [{ side, figure }])[0] ?? [];
