import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import { type PlanReading, readPlan } from "../plan/read-plan.ts";
import { countCells } from "./count-cells.ts";
import { countTargets } from "./count-targets.ts";
import { attempt, emptyCounting, type PlayerCounting, reach } from "./counting.ts";
import type { BallFigure, MomentFigure, PointFigure } from "./figure-def.ts";
import type { PlayedPoint } from "./played-point.ts";
import { playedPoints } from "./played-points.ts";
import { FIGURE_NAMES, FIGURES, type FigureName } from "./registry.ts";

type Told = (mine: PlayerCounting, point: PlayedPoint, isHit: boolean, part: string | undefined) => void;

const telling =
  (name: FigureName): Told =>
  (mine, point, isHit, part) => {
    attempt(reach(mine.figures, name, emptyCounting), isHit, point.id, point.level);
    if (part === undefined) return;
    const parts = reach(mine.parts, name, () => new Map());
    attempt(reach(parts, part, emptyCounting), isHit, point.id, point.level);
  };

const countBalls = (figure: BallFigure, mine: PlayerCounting, point: PlayedPoint, tell: Told): void => {
  for (const ball of point.balls) {
    const isHit = figure.hit(ball);
    if (isHit !== undefined) tell(mine, point, isHit, figure.part?.(ball));
  }
};

const countPoints = (figure: PointFigure, mine: PlayerCounting, point: PlayedPoint, tell: Told): void => {
  const isHit = figure.hit(point);
  if (isHit !== undefined) tell(mine, point, isHit, figure.part?.(point));
};

const countMoments = (figure: MomentFigure, mine: PlayerCounting, point: PlayedPoint, tell: Told): void => {
  for (const ball of point.balls) {
    const isHit = figure.hit(ball, point);
    if (isHit !== undefined) tell(mine, point, isHit, undefined);
  }
  for (let i = figure.counted(point); i > 0; i -= 1) tell(mine, point, figure.isCountedHit, undefined);
};

const COUNTED = FIGURE_NAMES.map((name) => {
  const figure = FIGURES[name];
  const tell = telling(name);
  const count = (mine: PlayerCounting, point: PlayedPoint): void => {
    if (figure.unit === "balls") countBalls(figure, mine, point, tell);
    else if (figure.unit === "points") countPoints(figure, mine, point, tell);
    else countMoments(figure, mine, point, tell);
  };
  return { levels: figure.levels, count };
});

const countPoint = (mine: PlayerCounting, point: PlayedPoint): void => {
  for (const { levels, count } of COUNTED) if (levels.includes(point.level)) count(mine, point);
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

const freshCounting = ({ plan }: PlanReading): PlayerCounting => ({
  figures: new Map(),
  parts: new Map(),
  cells: new Map(),
  targets: (plan?.rules ?? []).flatMap(({ id, targets }) =>
    targets.map((target) => ({ ruleId: id, target, count: emptyCounting() })),
  ),
});

/** Counts a match in one pass over its points. */
export const countMatch = (view: MatchView): ByPlayer<PlayerCounting | undefined> => {
  const plans = plansOf(view);
  const hands = byPlayer((side) => view.opened.players[side].hand);
  const counting = byPlayer((side) => {
    const plan = plans[side];
    return plan && freshCounting(plan);
  });
  const tell = (side: Side, point: PlayedPoint): void => {
    const mine = counting[side];
    if (mine) countPoint(mine, point);
  };
  for (const viewed of view.points) playedPoints(viewed, hands, plans, tell);
  return counting;
};
