import { rallyPhase } from "../balls/rally-phase.ts";
import { isKept, isLineBall, isStroke } from "../balls/strokes.ts";
import { DRAWN, EVERY_BALL, type PointFigure } from "./figure-def.ts";
import type { PlayedPoint } from "./played-point.ts";

const MOST_TOLD_APART = 5;

const firstLine = ({ balls }: PlayedPoint): number => balls.findIndex(isLineBall);

/**
 * Points won, of those with a line ball; by how many own balls were kept before the first one (`0` to `4`, `5+`):
 * the n of the parts are how far points were built up. SPEC D29.
 */
export const builtUp: PointFigure = {
  unit: "points",
  levels: DRAWN,
  hit: (point) => (firstLine(point) < 0 ? undefined : point.won),
  part: (point) => {
    const before = point.balls.slice(0, firstLine(point));
    const kept = before.filter((ball) => isStroke(ball) && isKept(ball)).length;
    return kept < MOST_TOLD_APART ? String(kept) : `${MOST_TOLD_APART}+`;
  },
};

/** Points won, of those with own balls kept and none down the line. SPEC D30. */
export const keptWon: PointFigure = {
  unit: "points",
  levels: DRAWN,
  hit: (point) => {
    const isOnlyKept = firstLine(point) < 0 && point.balls.some((ball) => isStroke(ball) && isKept(ball));
    return isOnlyKept ? point.won : undefined;
  },
};

/** Points won, of all whose length is known; by length: the n of the parts are how long rallies are. SPEC D33. */
export const rallyLength: PointFigure = {
  unit: "points",
  levels: EVERY_BALL,
  hit: ({ strokes, won }) => (strokes === undefined ? undefined : won),
  part: ({ strokes }) => rallyPhase(strokes ?? 1),
};
