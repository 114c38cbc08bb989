import { type ByPlayer, byPlayer } from "@courtloom/core";
import type { ChartingLevel, MatchView } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import type { PlanReading } from "../plan/read-plan.ts";
import { reach } from "../reach.ts";
import { BALL_CLASSES, type BallClass, isOfClass } from "./ball-class.ts";
import { countCells } from "./count-cells.ts";
import { countTargets } from "./count-targets.ts";
import { attempt, emptyCounting, emptyFigure, type PlayerCounting } from "./counting.ts";
import type { BallFigure, MomentFigure, PointFigure } from "./figure-def.ts";
import { plansOf } from "./plans-of.ts";
import { playedOf } from "./played-of.ts";
import type { PlayedPoint } from "./played-point.ts";
import { FIGURE_NAMES, FIGURES } from "./registry.ts";

const tell = (
  { figures }: PlayerCounting,
  place: number,
  pointId: string,
  isHit: boolean,
  part: string | undefined,
): void => {
  const figure = figures[place];
  if (!figure) return;
  attempt(figure.all, isHit, pointId);
  if (part !== undefined) attempt(reach(figure.parts, part, emptyCounting), isHit, pointId);
};

/** Figures with their places, of a level. */
interface Fed {
  readonly ofClass: readonly {
    readonly of: BallClass;
    readonly figures: readonly { readonly figure: BallFigure | MomentFigure; readonly place: number }[];
  }[];
  readonly points: readonly { readonly figure: PointFigure; readonly place: number }[];
  readonly moments: readonly { readonly figure: MomentFigure; readonly place: number }[];
}

const fedBy = (level: ChartingLevel): Fed => {
  const placed = FIGURE_NAMES.map((name, place) => ({ figure: FIGURES[name], place })).filter(({ figure }) =>
    figure.levels.includes(level),
  );
  const points = placed.flatMap(({ figure, place }) => (figure.unit === "points" ? { figure, place } : []));
  const moments = placed.flatMap(({ figure, place }) => (figure.unit === "moments" ? { figure, place } : []));
  const ofBalls = placed.flatMap(({ figure, place }) => (figure.unit === "points" ? [] : { figure, place }));
  const ofClass = BALL_CLASSES.map((of) => ({
    of,
    figures: ofBalls.filter(({ figure }) => figure.of === of),
  }));
  return { points, moments, ofClass: ofClass.filter(({ figures }) => figures.length > 0) };
};

const FED_BY = { score: fedBy("score"), key: fedBy("key"), every: fedBy("every") };

const countBall = (mine: PlayerCounting, point: PlayedPoint, ball: Ball): void => {
  for (const { of, figures } of FED_BY[point.level].ofClass) {
    if (!isOfClass(ball, of)) continue;
    for (const { figure, place } of figures) {
      const isHit = figure.hit(ball, point);
      if (isHit === undefined) continue;
      tell(mine, place, point.id, isHit, figure.unit === "balls" ? figure.part?.(ball) : undefined);
    }
  }
};

const countPoint = (mine: PlayerCounting, point: PlayedPoint): void => {
  const { points, moments } = FED_BY[point.level];
  for (const ball of point.balls) countBall(mine, point, ball);
  for (const { figure, place } of points) {
    const isHit = figure.hit(point);
    if (isHit !== undefined) tell(mine, place, point.id, isHit, figure.part?.(point));
  }
  for (const { figure, place } of moments) {
    for (let i = figure.counted(point); i > 0; i -= 1)
      tell(mine, place, point.id, figure.isCountedHit, undefined);
  }
  countCells(mine, point);
  countTargets(mine, point);
};

const freshCounting = (plan: PlanReading): PlayerCounting => ({
  plan,
  figures: FIGURE_NAMES.map(emptyFigure),
  cells: new Map(),
  targets: (plan.plan?.rules ?? []).flatMap(({ id, targets }) =>
    targets.map((target) => ({ ruleId: id, target, count: emptyCounting() })),
  ),
});

/** Counts a match in one pass over its points, or over those of one level. */
export const countMatch = (view: MatchView, level?: ChartingLevel): ByPlayer<PlayerCounting | undefined> => {
  const plans = plansOf(view);
  const counting = byPlayer((side) => {
    const plan = plans[side];
    return plan && freshCounting(plan);
  });
  for (const { side, point } of playedOf(view)) {
    const mine = counting[side];
    if (mine && (level === undefined || point.level === level)) countPoint(mine, point);
  }
  return counting;
};
