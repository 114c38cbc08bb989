import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { ChartingLevel, MatchView, ViewedPoint } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import { type PlanReading, readPlan } from "../plan/read-plan.ts";
import { reach } from "../reach.ts";
import { BALL_CLASSES, type BallClass, isOfClass } from "./ball-class.ts";
import { countCells } from "./count-cells.ts";
import { countTargets } from "./count-targets.ts";
import { attempt, emptyCounting, emptyFigure, type PlayerCounting } from "./counting.ts";
import type { BallFigure, MomentFigure, PointFigure } from "./figure-def.ts";
import type { PlayedPoint } from "./played-point.ts";
import { playedPoints } from "./played-points.ts";
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

/** Charted from now on, or in a point that shots were charted of: who was charted once keeps what was counted. */
const isCharted = (view: MatchView, side: Side): boolean =>
  view.subjects.includes(side) ||
  view.points.some(({ point, subjects }) => point.level !== "score" && subjects.includes(side));

/** The plan of each side that has figures; `undefined` for a side that is not charted or not of this academy. SPEC D5. */
export const plansOf = (view: MatchView): ByPlayer<PlanReading | undefined> =>
  byPlayer((side) => {
    if (!view.opened.players[side].own || !isCharted(view, side)) return undefined;
    return readPlan(view.opened.plans?.[side] ?? null);
  });

const freshCounting = (plan: PlanReading): PlayerCounting => ({
  plan,
  figures: FIGURE_NAMES.map(emptyFigure),
  cells: new Map(),
  targets: (plan.plan?.rules ?? []).flatMap(({ id, targets }) =>
    targets.map((target) => ({ ruleId: id, target, count: emptyCounting() })),
  ),
});

/** Counts a match in one pass over its points, or over some of them. */
export const countMatch = (
  view: MatchView,
  points: readonly ViewedPoint[] = view.points,
): ByPlayer<PlayerCounting | undefined> => {
  const plans = plansOf(view);
  const hands = byPlayer((side) => view.opened.players[side].hand);
  const counting = byPlayer((side) => {
    const plan = plans[side];
    return plan && freshCounting(plan);
  });
  const count = (side: Side, point: PlayedPoint): void => {
    const mine = counting[side];
    if (mine) countPoint(mine, point);
  };
  for (const viewed of points) playedPoints(viewed, hands, plans, count);
  return counting;
};
