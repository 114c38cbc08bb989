import { BASELINE, COURT, type CourtPoint, SIDELINE } from "./court.ts";

export interface CourtLine {
  readonly part:
    | "net"
    | "baseline"
    | "sideline"
    | "doublesSideline"
    | "serviceLine"
    | "centreLine"
    | "centreMark";
  readonly from: CourtPoint;
  readonly to: CourtPoint;
}

const HALF_DOUBLES = COURT.doublesWidth / 2;
const MARK = 0.1;

const across = (part: CourtLine["part"], halfWidth: number, y: number): CourtLine => ({
  part,
  from: { x: 0 - halfWidth, y },
  to: { x: halfWidth, y },
});

const along = (part: CourtLine["part"], x: number, from: number, to: number): CourtLine => ({
  part,
  from: { x, y: from },
  to: { x, y: to },
});

/** Every line of a court and the net, for drawing; in metres, y along the court. SPEC G2. */
export const COURT_LINES: readonly CourtLine[] = [
  across("net", HALF_DOUBLES, 0),
  across("baseline", HALF_DOUBLES, -BASELINE),
  across("baseline", HALF_DOUBLES, BASELINE),
  across("serviceLine", SIDELINE, -COURT.serviceLine),
  across("serviceLine", SIDELINE, COURT.serviceLine),
  along("sideline", -SIDELINE, -BASELINE, BASELINE),
  along("sideline", SIDELINE, -BASELINE, BASELINE),
  along("doublesSideline", -HALF_DOUBLES, -BASELINE, BASELINE),
  along("doublesSideline", HALF_DOUBLES, -BASELINE, BASELINE),
  along("centreLine", 0, -COURT.serviceLine, COURT.serviceLine),
  along("centreMark", 0, -BASELINE, MARK - BASELINE),
  along("centreMark", 0, BASELINE - MARK, BASELINE),
];
