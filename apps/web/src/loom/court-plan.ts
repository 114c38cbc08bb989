import { BASELINE, type CourtPoint, SIDELINE } from "@courtloom/tennis";

/** A court drawn from above with the striker's end at the bottom, in hundredths of a metre. */
const MARGIN = { x: 150, y: 170 } as const;
const HALF = { x: Math.round(SIDELINE * 100) + MARGIN.x, y: Math.round(BASELINE * 100) + MARGIN.y } as const;

export const PLAN = { width: HALF.x * 2, height: HALF.y * 2 } as const;

export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

const within = (value: number, max: number): number => Math.round(Math.min(max, Math.max(0, value)));

/** Where a place in the striker's metres lies on the plan; places beyond the drawing are drawn at its edge. */
export const planPoint = ({ x, y }: CourtPoint): PlanPoint => ({
  x: within(HALF.x + x * 100, PLAN.width),
  y: within(HALF.y - y * 100, PLAN.height),
});

/** The cross that marks where a missed ball ended. */
export const missCross = ({ x, y }: PlanPoint, arm = 16): string =>
  `M${x - arm} ${y - arm}L${x + arm} ${y + arm}M${x - arm} ${y + arm}L${x + arm} ${y - arm}`;
