import type { Ball } from "../balls/ball.ts";
import { isShort } from "../balls/strokes.ts";
import { type BallFigure, DRAWN, type MomentFigure } from "./figure-def.ts";
import type { PlayedPoint } from "./played-point.ts";

/** Right or wrong by the plan; `undefined` where it says nothing, cannot tell, or a chance was passed up. */
const isRight = ({ judgement: { verdict } }: Ball): boolean | undefined =>
  verdict === "onPlan" || verdict === "offPlan" ? verdict === "onPlan" : undefined;

const ofJudged = (wants: { readonly right: boolean; readonly missed: boolean }): BallFigure => ({
  unit: "balls",
  levels: DRAWN,
  of: "judged",
  hit: (ball) => {
    const right = isRight(ball);
    return right === undefined ? undefined : right === wants.right && ball.missed === wants.missed;
  },
});

/** The four counts, each of all balls judged right or wrong. SPEC D26. */
export const rightMade: BallFigure = ofJudged({ right: true, missed: false });
export const rightMissed: BallFigure = ofJudged({ right: true, missed: true });
export const wrongMade: BallFigure = ofJudged({ right: false, missed: false });
export const wrongMissed: BallFigure = ofJudged({ right: false, missed: true });

const isOff = (ball: Ball): boolean | undefined => {
  const right = isRight(ball);
  return right === undefined ? undefined : !right;
};

/** Off plan of judged line balls. SPEC D25. */
export const lineOffPlan: BallFigure = {
  unit: "balls",
  levels: DRAWN,
  of: "line",
  hit: isOff,
};

/** Off plan of judged line balls that were missed. SPEC D25. */
export const lineMissedOffPlan: BallFigure = {
  unit: "balls",
  levels: DRAWN,
  of: "line",
  hit: (ball) => (ball.missed ? isOff(ball) : undefined),
};

/** On plan of all balls that the plan speaks of, passed up ones among them. SPEC D25. */
export const planKept: BallFigure = {
  unit: "balls",
  levels: DRAWN,
  of: "judged",
  hit: ({ judgement: { verdict } }) => verdict === "onPlan",
};

/**
 * At key balls a chance taken counts only where a chance passed up would have been told too: one that sat up, by
 * the counter; a short ball, which is asked whatever its choice; and what the place alone tells. SPEC D28.
 */
const isToldAlike = (ball: Ball, point: PlayedPoint): boolean => {
  const { because } = ball.judgement;
  if (point.level !== "key" || isShort(ball)) return true;
  if (point.isSatUpOn && ball.ballHeight === "sitsUp") return true;
  return because.code === "lineOn" && because.facets.every((facet) => facet === "depth" || facet === "side");
};

const isTaken = (ball: Ball, point: PlayedPoint): boolean | undefined => {
  if (ball.judgement.because.code !== "lineOn" || !isToldAlike(ball, point)) return undefined;
  return ball.judgement.verdict === "onPlan";
};

/** Moments when the line was surely on that were taken, of those moments. SPEC D28. */
export const agreedTaken: MomentFigure = {
  unit: "moments",
  levels: DRAWN,
  of: "judged",
  hit: isTaken,
  counted: ({ satUpKept }) => satUpKept,
  isCountedHit: false,
};

/** Moments when the line was surely on that were not taken, of those moments. SPEC D28. */
export const passedUp: MomentFigure = {
  unit: "moments",
  levels: DRAWN,
  of: "judged",
  hit: (ball, point) => {
    const taken = isTaken(ball, point);
    return taken === undefined ? undefined : !taken;
  },
  counted: ({ satUpKept }) => satUpKept,
  isCountedHit: true,
};
