import { isStroke } from "../balls/strokes.ts";
import { type CellCounting, type PlayerCounting, reach } from "./counting.ts";
import type { PlayedPoint } from "./played-point.ts";

/** Adds a point's groundstrokes to the cells of their situations and choices. SPEC D36. */
export const countCells = (mine: PlayerCounting, point: PlayedPoint): void => {
  for (const ball of point.balls) {
    const { choice, depth, side, missed, judgement } = ball;
    if (choice === undefined || !isStroke(ball)) continue;
    const landing = ball.incoming?.landing;
    const cell = reach(
      mine.cells,
      `${point.level} ${depth} ${side} ${landing ?? ""} ${choice}`,
      (): CellCounting => ({
        level: point.level,
        depth,
        side,
        landing,
        choice,
        missed: [],
        won: [],
        lost: [],
        against: [],
        n: 0,
        points: 0,
        lastPoint: "",
      }),
    );
    cell.n += 1;
    if (cell.lastPoint !== point.id) cell.points += 1;
    cell.lastPoint = point.id;
    if (missed) cell.missed.push(point.id);
    if (point.won !== undefined) (point.won ? cell.won : cell.lost).push(point.id);
    if (judgement.verdict === "offPlan" || judgement.verdict === "passedUp") cell.against.push(point.id);
  }
};
