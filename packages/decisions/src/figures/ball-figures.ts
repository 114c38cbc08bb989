import { type BallFigure, DRAWN, EVERY_BALL } from "./figure-def.ts";
import { cameInBehind } from "./short-figures.ts";

/** Changed the mind, of own balls where somebody answered. SPEC D31. */
export const hesitated: BallFigure = {
  unit: "balls",
  levels: DRAWN,
  of: "any",
  hit: (ball) => ball.hesitated,
};

/** Came in behind it, of own balls where somebody answered. SPEC D31. */
export const cameIn: BallFigure = { unit: "balls", levels: DRAWN, of: "any", hit: cameInBehind };

/** Missed, of own balls that are no groundstrokes; by kind. SPEC D34. */
export const otherMissed: BallFigure = {
  unit: "balls",
  levels: EVERY_BALL,
  of: "any",
  hit: ({ kind, missed }) => (kind === "groundstroke" ? undefined : missed),
  part: ({ kind }) => kind,
};
