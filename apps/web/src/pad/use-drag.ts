import type { SeenPoint } from "@courtloom/tennis";
import { type PointerEvent, type RefObject, useLayoutEffect, useRef, useState } from "react";
import { flushSync } from "react-dom";
import { type CourtMap, type ScreenPoint, toCourt } from "./court-map.ts";

export interface Drag {
  readonly from: SeenPoint;
  /** Absent while the finger has hardly moved: a touch. */
  readonly to?: SeenPoint;
}

/** Puts a drag on the screen at once, beside what React draws. */
export type PaintDrag = (drag: Drag) => void;

/** A finger that moved less than this, in CSS pixels, touched and did not drag. */
const TOUCH_RADIUS_PX = 14;

/** Where the court lies on the screen. */
type Corner = Pick<DOMRect, "left" | "top">;

const placeOf = (event: Pick<MouseEvent, "clientX" | "clientY">, { left, top }: Corner): ScreenPoint => ({
  x: event.clientX - left,
  y: event.clientY - top,
});

interface Held {
  readonly pointer: number;
  readonly start: ScreenPoint;
  readonly moved: boolean;
  readonly drag: Drag;
}

const stop = (event: Event): void => event.stopPropagation();

/**
 * Hands every movement over the court straight to `onMove`, and keeps it from the rest of the page, which has nothing
 * to do with it: at each movement React would look for its own listeners all the way up.
 */
const useMovements = (
  surface: RefObject<SVGSVGElement | null>,
  onMove: (event: globalThis.PointerEvent) => void,
): void => {
  const latest = useRef(onMove);
  useLayoutEffect(() => {
    latest.current = onMove;
  });
  useLayoutEffect(() => {
    const court = surface.current;
    if (!court) return;
    const take = (event: globalThis.PointerEvent): void => {
      event.stopPropagation();
      latest.current(event);
    };
    court.addEventListener("pointermove", take);
    court.addEventListener("touchmove", stop, { passive: true });
    return () => {
      court.removeEventListener("pointermove", take);
      court.removeEventListener("touchmove", stop);
    };
  }, [surface]);
};

interface DragOptions {
  readonly map: CourtMap;
  readonly onDrawn: (drag: Drag) => void;
  /** What is understood of a drag: React draws anew only when it changes, as the thread itself is painted by hand. */
  readonly readingOf: (drag: Drag) => string;
}

/**
 * One finger draws; others that come down meanwhile are ignored. A drag that the system takes away
 * (a call, a swipe from the edge) is dropped, not charted.
 */
export const useDrag = ({ map, onDrawn, readingOf }: DragOptions) => {
  const held = useRef<Held | undefined>(undefined);
  const surface = useRef<SVGSVGElement>(null);
  const corner = useRef<Corner>({ left: 0, top: 0 });
  const painter = useRef<PaintDrag | undefined>(undefined);
  const reading = useRef("");
  const [live, setLive] = useState<Drag | undefined>(undefined);
  const follow = (next: Held | undefined): void => {
    held.current = next;
    reading.current = next ? readingOf(next.drag) : "";
    setLive(next?.drag);
  };
  const moveTo = (before: Held, at: ScreenPoint): Held => {
    const far = Math.hypot(at.x - before.start.x, at.y - before.start.y) >= TOUCH_RADIUS_PX;
    const moved = before.moved || far;
    return moved ? { ...before, moved, drag: { from: before.drag.from, to: toCourt(map, at) } } : before;
  };
  // A notice that comes or goes moves the court under a finger; its size and with it the map change then too.
  useLayoutEffect(() => {
    if (surface.current && map) corner.current = surface.current.getBoundingClientRect();
  }, [map]);
  const onMove = (event: globalThis.PointerEvent): void => {
    if (held.current?.pointer !== event.pointerId) return;
    const next = moveTo(held.current, placeOf(event, corner.current));
    if (next === held.current) return;
    held.current = next;
    painter.current?.(next.drag);
    // Movements come just before a frame; drawn by React's own schedule it would be seen one frame later. SPEC BN5.
    if (readingOf(next.drag) !== reading.current) flushSync(() => follow(next));
  };
  useMovements(surface, onMove);
  const handlers = {
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      if (held.current || (event.pointerType === "mouse" && event.button !== 0)) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      corner.current = event.currentTarget.getBoundingClientRect();
      const start = placeOf(event, corner.current);
      follow({ pointer: event.pointerId, start, moved: false, drag: { from: toCourt(map, start) } });
    },
    onPointerUp: (event: PointerEvent<SVGSVGElement>) => {
      if (held.current?.pointer !== event.pointerId) return;
      const { drag } = moveTo(held.current, placeOf(event, corner.current));
      follow(undefined);
      onDrawn(drag);
    },
    onPointerCancel: (event: PointerEvent<SVGSVGElement>) => {
      if (held.current?.pointer === event.pointerId) follow(undefined);
    },
  };
  return { live, handlers, surface, painter };
};
