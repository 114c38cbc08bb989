import type { LandingDepth } from "@courtloom/tennis";
import type { Ball, Choice } from "../balls/ball.ts";
import { isStroke } from "../balls/strokes.ts";
import { reach } from "../reach.ts";
import type { CellCounting, PlayerCounting } from "./counting.ts";
import type { PlayedPoint } from "./played-point.ts";

const LEVEL = { score: 0, key: 1, every: 2 } as const;
const DEPTH = { behindBaseline: 0, insideBaseline: 1, insideServiceLine: 2 } as const;
const SIDE = { left: 0, middle: 1, right: 2 } as const;
const LANDING = { short: 0, mid: 1, deep: 2, unknown: 3 } as const;
const CHOICE = { kept: 0, line: 1, cross: 2, middle: 3, fromMiddle: 4 } as const;

/** A number of its own for each level, situation and choice: cheaper to look up than a text. */
const numberOf = (
  { level }: PlayedPoint,
  { depth, side }: Ball,
  landing: LandingDepth | undefined,
  choice: Choice,
): number =>
  (((LEVEL[level] * 3 + DEPTH[depth]) * 3 + SIDE[side]) * 4 + LANDING[landing ?? "unknown"]) * 5 +
  CHOICE[choice];

/** Adds a point's groundstrokes to the cells of their situations and choices. SPEC D36. */
export const countCells = (mine: PlayerCounting, point: PlayedPoint): void => {
  for (const ball of point.balls) {
    const { choice, depth, side, missed, judgement } = ball;
    if (choice === undefined || !isStroke(ball)) continue;
    const landing = ball.incoming?.landing;
    const cell = reach(
      mine.cells,
      numberOf(point, ball, landing, choice),
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
