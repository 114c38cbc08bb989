import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { ChartingLevel, MatchView, ViewedPoint } from "@courtloom/match-log";
import { type PlanReading, readPlan } from "../plan/read-plan.ts";
import { reach } from "../reach.ts";
import { countCells } from "./count-cells.ts";
import { countTargets } from "./count-targets.ts";
import { attempt, emptyCounting, emptyFigure, type FigureCounting, type PlayerCounting } from "./counting.ts";
import type { BallFigure, FigureDef, MomentFigure, PointFigure } from "./figure-def.ts";
import type { PlayedPoint } from "./played-point.ts";
import { playedPoints } from "./played-points.ts";
import { FIGURE_NAMES, FIGURES, type FigureName, feeds } from "./registry.ts";

const tell = ({ all, parts }: FigureCounting, pointId: string, isHit: boolean, part?: string): void => {
  attempt(all, isHit, pointId);
  if (part !== undefined) attempt(reach(parts, part, emptyCounting), isHit, pointId);
};

const countBalls = (figure: BallFigure, counting: FigureCounting, point: PlayedPoint): void => {
  for (const ball of point.balls) {
    const isHit = figure.hit(ball);
    if (isHit !== undefined) tell(counting, point.id, isHit, figure.part?.(ball));
  }
};

const countPoints = (figure: PointFigure, counting: FigureCounting, point: PlayedPoint): void => {
  const isHit = figure.hit(point);
  if (isHit !== undefined) tell(counting, point.id, isHit, figure.part?.(point));
};

const countMoments = (figure: MomentFigure, counting: FigureCounting, point: PlayedPoint): void => {
  for (const ball of point.balls) {
    const isHit = figure.hit(ball, point);
    if (isHit !== undefined) tell(counting, point.id, isHit);
  }
  for (let i = figure.counted(point); i > 0; i -= 1) tell(counting, point.id, figure.isCountedHit);
};

const countFigure = (figure: FigureDef, counting: FigureCounting, point: PlayedPoint): void => {
  if (figure.unit === "balls") countBalls(figure, counting, point);
  else if (figure.unit === "points") countPoints(figure, counting, point);
  else countMoments(figure, counting, point);
};

/** The figures that a level feeds. */
const fedBy = (level: ChartingLevel) =>
  FIGURE_NAMES.filter((name) => feeds(name, level)).map((name) => ({ name, figure: FIGURES[name] }));

const FED_BY = { score: fedBy("score"), key: fedBy("key"), every: fedBy("every") };

const countPoint = (mine: PlayerCounting, point: PlayedPoint): void => {
  for (const { name, figure } of FED_BY[point.level]) countFigure(figure, mine.figures[name], point);
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

const freshFigures = (): Readonly<Record<FigureName, FigureCounting>> => {
  const figures: Partial<Record<FigureName, FigureCounting>> = {};
  for (const name of FIGURE_NAMES) figures[name] = emptyFigure();
  return figures as Record<FigureName, FigureCounting>;
};

const freshCounting = (plan: PlanReading): PlayerCounting => ({
  plan,
  figures: freshFigures(),
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
