import { type PointerEvent, useState } from "react";
import { type CourtMap, type ScreenPoint, toCourt } from "../pad/court-map.ts";
import type { TriedBall } from "./tried-ball.ts";

export type BallPath = Pick<TriedBall, "from" | "to">;

/** A finger that moved less than this, in CSS pixels, touched and did not drag. */
const TOUCH_RADIUS_PX = 14;

/** The striker stands at the near end, however far up the finger began. */
const NEAREST_NET_M = -0.3;

interface Held {
  readonly pointer: number;
  readonly start: ScreenPoint;
  readonly at: ScreenPoint;
  readonly moved: boolean;
}

const placeOf = ({ currentTarget, clientX, clientY }: PointerEvent<SVGSVGElement>): ScreenPoint => {
  const box = currentTarget.getBoundingClientRect();
  return { x: clientX - box.left, y: clientY - box.top };
};

const pathOf = (map: CourtMap, { start, at, moved }: Held): BallPath => {
  const [from, to] = [toCourt(map, start), toCourt(map, at)];
  return {
    from: { x: from.right / 100, y: Math.min(NEAREST_NET_M, from.away / 100) },
    ...(moved ? { to: { x: to.right / 100, y: to.away / 100 } } : {}),
  };
};

/** One finger draws a ball; others meanwhile are ignored, and what the system takes away is dropped. */
export const useBallDrag = (map: CourtMap, onDrawn: (path: BallPath) => void) => {
  const [held, setHeld] = useState<Held | undefined>(undefined);
  const movedTo = (before: Held, at: ScreenPoint): Held => {
    const isFar = Math.hypot(at.x - before.start.x, at.y - before.start.y) >= TOUCH_RADIUS_PX;
    return { ...before, at, moved: before.moved || isFar };
  };
  const handlers = {
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      if (held || (event.pointerType === "mouse" && event.button !== 0)) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const at = placeOf(event);
      setHeld({ pointer: event.pointerId, start: at, at, moved: false });
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
      if (held?.pointer === event.pointerId) setHeld(movedTo(held, placeOf(event)));
    },
    onPointerUp: (event: PointerEvent<SVGSVGElement>) => {
      if (held?.pointer !== event.pointerId) return;
      setHeld(undefined);
      onDrawn(pathOf(map, movedTo(held, placeOf(event))));
    },
    onPointerCancel: (event: PointerEvent<SVGSVGElement>) => {
      if (held?.pointer === event.pointerId) setHeld(undefined);
    },
  };
  return { live: held && pathOf(map, held), handlers };
};
