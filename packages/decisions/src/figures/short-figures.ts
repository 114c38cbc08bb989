import type { BallHeight } from "@courtloom/match-log";
import type { Ball } from "../balls/ball.ts";
import { isShort } from "../balls/strokes.ts";
import { type BallFigure, DRAWN, type PointFigure } from "./figure-def.ts";
import type { PlayedPoint } from "./played-point.ts";

/** Who came in behind a ball; an approach says so by its kind. `undefined` where nobody answered. */
export const cameInBehind = ({ cameIn, kind }: Pick<Ball, "cameIn" | "kind">): boolean | undefined =>
  cameIn ?? (kind === "approach" ? true : undefined);

/** Figures of the short balls that came at one of these heights. SPEC D27. */
const figuresFor = (...heights: readonly BallHeight[]) => {
  const isOne = (ball: Ball): boolean =>
    isShort(ball) && ball.ballHeight !== undefined && heights.includes(ball.ballHeight);
  const first = ({ balls }: PlayedPoint) => balls.find(isOne);
  /** Down the line, of those from a side whose choice is known. */
  const line: BallFigure = {
    unit: "balls",
    levels: DRAWN,
    of: "short",
    hit: (ball) =>
      isOne(ball) && ball.side !== "middle" && ball.choice ? ball.choice === "line" : undefined,
    part: ({ side }) => side,
  };
  /** Came in behind it, of those answered. */
  const cameIn: BallFigure = {
    unit: "balls",
    levels: DRAWN,
    of: "short",
    hit: (ball) => (isOne(ball) ? cameInBehind(ball) : undefined),
    part: ({ side }) => side,
  };
  /** Missed, by side and choice. */
  const missed: BallFigure = {
    unit: "balls",
    levels: DRAWN,
    of: "short",
    hit: (ball) => (isOne(ball) ? ball.missed : undefined),
    part: ({ side, choice }) => `${side}.${choice ?? "unknown"}`,
  };
  /** Points won, of those with such a ball, by the first one's side, its choice, and whether the player came in. */
  const won: PointFigure = {
    unit: "points",
    levels: DRAWN,
    hit: (point) => (first(point) ? point.won : undefined),
    part: (point) => {
      const ball = first(point);
      if (!ball) return "unknown";
      const came = cameInBehind(ball);
      const after = came === undefined ? "unknown" : came ? "in" : "stayed";
      return `${ball.side}.${ball.choice ?? "unknown"}.${after}`;
    },
  };
  return { line, cameIn, missed, won };
};

export const shortLow = figuresFor("low");
export const shortHigh = figuresFor("sitsUp", "jumps");
