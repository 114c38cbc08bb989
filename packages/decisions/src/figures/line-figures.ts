import type { Ball } from "../balls/ball.ts";
import { isKept, isLineBall, spotOf } from "../balls/strokes.ts";
import { type BallFigure, DRAWN, EVERY_BALL } from "./figure-def.ts";

const HURTS: readonly Ball["result"][] = ["winner", "forced", "weak"];

/** Line balls that ended net, wide or long, of line balls tried; by the spot they were struck from. SPEC D3. */
export const lineMissed: BallFigure = {
  unit: "balls",
  levels: DRAWN,
  of: "line",
  hit: ({ missed }) => missed,
  part: spotOf,
};

/** Line balls of own groundstrokes whose choice is known. SPEC D3. */
export const lineShare: BallFigure = {
  unit: "balls",
  levels: DRAWN,
  of: "stroke",
  hit: isLineBall,
  part: spotOf,
};

/** Line balls that won the point, forced the opponent's miss or a weak reply, of those whose result is known. SPEC D23. */
export const lineHurt: BallFigure = {
  unit: "balls",
  levels: DRAWN,
  of: "line",
  hit: ({ missed, result }) => (missed || result ? !missed && HURTS.includes(result) : undefined),
};

/** Kept balls that ended net, wide or long, of those kept. SPEC D22. */
export const keptMissed: BallFigure = {
  unit: "balls",
  levels: DRAWN,
  of: "stroke",
  hit: (ball) => (isKept(ball) ? ball.missed : undefined),
  part: spotOf,
};

/** Cross-court of the drawn balls that were kept: a touch does not tell cross-court from middle. SPEC D22. */
export const crossShare: BallFigure = {
  unit: "balls",
  levels: EVERY_BALL,
  of: "stroke",
  hit: ({ choice }) => (choice === "cross" || choice === "middle" ? choice === "cross" : undefined),
};

/** Groundstrokes sent on another line than they came, of those where both are known. SPEC D24. */
export const directionChanged: BallFigure = {
  unit: "balls",
  levels: EVERY_BALL,
  of: "stroke",
  hit: ({ isChange }) => isChange,
};
