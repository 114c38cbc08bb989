import type { Side } from "@courtloom/core";
import type { CourtPoint } from "./court.ts";
import type { EndSeen, Seat, SeenPoint } from "./raw-stroke.ts";

/** How a stroke was seen: from which seat, with side A at which end, struck by whom. */
export interface View {
  readonly seat: Seat;
  readonly endOfA: EndSeen;
  readonly striker: Side;
}

export interface StrokePath {
  readonly from: CourtPoint;
  readonly to: CourtPoint;
}

const OTHER_END: Readonly<Record<EndSeen, EndSeen>> = {
  near: "far",
  far: "near",
  left: "right",
  right: "left",
};

/** The other end as seen from the same seat: after a change of ends, or where the ends had been wrong. SPEC G4. */
export const turnEnds = (endOfA: EndSeen): EndSeen => OTHER_END[endOfA];

/** The same end of the court named from the other kind of seat: near is left and far is right. */
export const endFrom = (seat: Seat, end: EndSeen): EndSeen => {
  const isFirst = end === "near" || end === "left";
  if (seat === "behind") return isFirst ? "near" : "far";
  return isFirst ? "left" : "right";
};

/** 1 when the striker looks in the chartist's positive direction (away, or right), else -1. */
function facing(view: View): 1 | -1 {
  const isAFirst = view.endOfA === "near" || view.endOfA === "left";
  return isAFirst === (view.striker === "A") ? 1 : -1;
}

/** Adding 0 turns -0 into 0, so that equal places are equal values. */
const times = (sign: 1 | -1, value: number): number => sign * value + 0;

/**
 * A seen point in the striker's own metres: x to the striker's right, y from the net, the striker's half
 * negative and the target half positive. SPEC G3.
 */
export function seenByStriker(point: SeenPoint, view: View): CourtPoint {
  const sign = facing(view);
  const isBehind = view.seat === "behind";
  const along = isBehind ? point.away : point.right;
  const rightward = isBehind ? point.right : -point.away;
  return { x: times(sign, rightward) / 100, y: times(sign, along) / 100 };
}

/** The inverse of `seenByStriker`, to the whole centimetre: how a stroke would be drawn from a seat. SPEC G3. */
export function seenFrom(path: StrokePath, view: View): { from: SeenPoint; to: SeenPoint } {
  return { from: seenPoint(path.from, view), to: seenPoint(path.to, view) };
}

function seenPoint(point: CourtPoint, view: View): SeenPoint {
  const sign = facing(view);
  const rightward = times(sign, Math.round(point.x * 100));
  const along = times(sign, Math.round(point.y * 100));
  return view.seat === "behind"
    ? { right: rightward, away: along }
    : { right: along, away: times(-1, rightward) };
}
