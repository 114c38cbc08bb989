import type { SeenPoint } from "@courtloom/tennis";
import { type PointerEvent, useRef, useState } from "react";
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

const placeOf = (event: PointerEvent<SVGSVGElement>): ScreenPoint => {
  const box = event.currentTarget.getBoundingClientRect();
  return { x: event.clientX - box.left, y: event.clientY - box.top };
};

interface Held {
  readonly pointer: number;
  readonly start: ScreenPoint;
  readonly moved: boolean;
  readonly drag: Drag;
}

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
  const handlers = {
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      if (held.current || (event.pointerType === "mouse" && event.button !== 0)) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const start = placeOf(event);
      follow({ pointer: event.pointerId, start, moved: false, drag: { from: toCourt(map, start) } });
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
      if (held.current?.pointer !== event.pointerId) return;
      const next = moveTo(held.current, placeOf(event));
      if (next === held.current) return;
      held.current = next;
      painter.current?.(next.drag);
      // Movements come just before a frame; drawn by React's own schedule it would be seen one frame later. SPEC BN5.
      if (readingOf(next.drag) !== reading.current) flushSync(() => follow(next));
    },
    onPointerUp: (event: PointerEvent<SVGSVGElement>) => {
      if (held.current?.pointer !== event.pointerId) return;
      const { drag } = moveTo(held.current, placeOf(event));
      follow(undefined);
      onDrawn(drag);
    },
    onPointerCancel: (event: PointerEvent<SVGSVGElement>) => {
      if (held.current?.pointer === event.pointerId) follow(undefined);
    },
  };
  return { live, handlers, painter };
};
