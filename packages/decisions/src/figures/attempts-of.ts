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

/** What a player's figure counts, one by one in the order of play; empty for a side without figures. SPEC D37. */
export const attemptsOf = (view: MatchView, side: Side, figure: FigureName): readonly FigureAttempt[] => {
  const all = plansOf(view);
  const plans = { A: undefined, B: undefined, [side]: all[side] };
  const hands = byPlayer((each) => view.opened.players[each].hand);
  const attempts: FigureAttempt[] = [];
  for (const [at, viewed] of view.points.entries()) {
    playedPoints(viewed, hands, plans, (_, point) => attempts.push(...attemptsIn(figure, point, at)));
  }
  return attempts;
};
