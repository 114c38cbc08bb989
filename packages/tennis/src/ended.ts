import { BASELINE, COURT, type CourtPoint, SIDELINE } from "./court.ts";
import { someCornersDiffer } from "./jitter.ts";

export const ENDINGS = ["in", "net", "wide", "long"] as const;

/** Where a stroke ended by its drawing alone; what a person says stands above it. */
export type Ended = (typeof ENDINGS)[number];

/** Half a centimetre: drawn points are whole centimetres, and a ball on the line is in. */
const ON_LINE = 0.005;

/** SPEC G8. Past two lines at once, the line that it is farther past is named. */
export function endedAt(to: CourtPoint): Ended {
  if (to.y <= 0) return "net";
  const wideBy = Math.abs(to.x) - SIDELINE;
  const longBy = to.y - BASELINE;
  if (Math.max(wideBy, longBy) <= ON_LINE + 1e-9) return "in";
  return longBy >= wideBy ? "long" : "wide";
}

/** Whether it ended so wherever within the drawing error it truly ended; near a line, ask or take it as in. SPEC G12. */
export const isEndedCertain = (to: CourtPoint): boolean => {
  const ended = endedAt(to);
  return !someCornersDiffer(to, (corner) => endedAt(corner) !== ended);
};

export const LANDING_DEPTHS = ["short", "mid", "deep"] as const;

/** How deep a ball came down: inside the service line, up to half-way to the baseline, or beyond. */
export type LandingDepth = (typeof LANDING_DEPTHS)[number];

/** `undefined` for a ball that ended in the net. SPEC G9. */
export function landingDepth(to: CourtPoint): LandingDepth | undefined {
  if (endedAt(to) === "net") return undefined;
  if (to.y < COURT.serviceLine) return "short";
  return to.y < COURT.deepFrom ? "mid" : "deep";
}
