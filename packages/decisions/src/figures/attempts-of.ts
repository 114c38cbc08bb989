import { byPlayer, type Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import { isOfClass } from "./ball-class.ts";
import { plansOf } from "./count-match.ts";
import type { PlayedPoint } from "./played-point.ts";
import { playedPoints } from "./played-points.ts";
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

const attemptsIn = (figure: FigureName, point: PlayedPoint, at: number): readonly FigureAttempt[] => {
  const def = FIGURES[figure];
  if (!def.levels.includes(point.level)) return [];
  if (def.unit === "points") {
    const event = def.hit(point);
    return event === undefined ? [] : [{ at, event }];
  }
  const told = point.balls.flatMap((ball) => {
    const event = isOfClass(ball, def.of) ? def.hit(ball, point) : undefined;
    return event === undefined ? [] : [{ at, event, ...planOf(ball) }];
  });
  if (def.unit === "balls") return told;
  const counted = Array.from({ length: def.counted(point) }, () => ({ at, event: def.isCountedHit }));
  return [...told, ...counted];
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
  const all = plansOf(view);
  const isAsked = (side: Side) => asks.some((ask) => ask.side === side);
  const plans = byPlayer((side) => (isAsked(side) ? all[side] : undefined));
  const hands = byPlayer((side) => view.opened.players[side].hand);
  const attempts = asks.map((): FigureAttempt[] => []);
  const tell = (whose: Side, point: PlayedPoint, at: number): void => {
    for (const [i, { side, figure }] of asks.entries())
      if (side === whose) attempts[i]?.push(...attemptsIn(figure, point, at));
  };
  for (const [at, viewed] of view.points.entries())
    playedPoints(viewed, hands, plans, (side, point) => tell(side, point, at));
  return attempts;
};

/** The same for one figure. */
export const attemptsOf = (view: MatchView, side: Side, figure: FigureName): readonly FigureAttempt[] =>
  attemptsOfEach(view, [{ side, figure }])[0] ?? [];
