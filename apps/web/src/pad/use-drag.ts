import type { SeenPoint } from "@courtloom/tennis";
import { type PointerEvent, useEffect, useLayoutEffect, useRef, useState } from "react";
import { flushSync } from "react-dom";
import { type CourtMap, type ScreenPoint, toCourt } from "./court-map.ts";

export interface Drag {
  readonly from: SeenPoint;
  /** Absent while the finger has hardly moved: a touch. */
  readonly to?: SeenPoint;
}

/** What puts a drag on the screen at once, beside what React draws. */
export interface Brush {
  /** Where the finger is now, which React may not know yet; absent while none draws. */
  drag?: Drag | undefined;
  /** Absent while nothing can be painted on. */
  paint?: ((drag: Drag) => void) | undefined;
}

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

/**
 * Hands movements to `take` before the page sees them, and keeps from the page those that it takes: nothing else has to
 * do with them, and React would look for its own listeners all the way up at each.
 */
const useMovements = (take: (event: globalThis.PointerEvent) => void, isDrawing: () => boolean): void => {
  const latest = useRef({ take, isDrawing });
  useLayoutEffect(() => {
    latest.current = { take, isDrawing };
  });
  useEffect(() => {
    const onPointer = (event: globalThis.PointerEvent): void => {
      if (!latest.current.isDrawing()) return;
      event.stopPropagation();
      latest.current.take(event);
    };
    const onTouch = (event: TouchEvent): void => {
      if (latest.current.isDrawing()) event.stopPropagation();
    };
    window.addEventListener("pointermove", onPointer, { capture: true });
    window.addEventListener("touchmove", onTouch, { capture: true, passive: true });
    return () => {
      window.removeEventListener("pointermove", onPointer, { capture: true });
      window.removeEventListener("touchmove", onTouch, { capture: true });
    };
  }, []);
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
  const brush = useRef<Brush>({});
  const reading = useRef("");
  const [live, setLive] = useState<Drag | undefined>(undefined);
  const follow = (next: Held | undefined): void => {
    held.current = next;
    brush.current.drag = next?.drag;
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
    const before = held.current;
    if (before?.pointer !== event.pointerId) return;
    const next = moveTo(before, placeOf(event, corner.current));
    if (next === before) return;
    held.current = next;
    brush.current.drag = next.drag;
    brush.current.paint?.(next.drag);
    // A touch becomes a thread in this very frame; what is said of it may come one later. SPEC BN5.
    if (!before.moved) flushSync(() => follow(next));
    else if (readingOf(next.drag) !== reading.current) follow(next);
  };
  useMovements(onMove, () => held.current !== undefined);
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
  return { live, handlers, surface, brush };
};
