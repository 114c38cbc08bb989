import type { Stroke } from "@courtloom/tennis";
import { type RefObject, useCallback, useLayoutEffect, useRef } from "react";
import styles from "./court.module.css";
import { type CourtMap, type ScreenPoint, toScreen } from "./court-map.ts";
import { isSurelyOut } from "./drawn-shot.tsx";
import type { Brush, Drag } from "./use-drag.ts";

interface LiveShotProps {
  readonly map: CourtMap;
  readonly drag: Drag;
  /** Undefined for a touch. */
  readonly stroke: Stroke | undefined;
  readonly brush: RefObject<Brush>;
}

/** Half the width of the cross where a ball was missed, in CSS pixels. */
const CROSS_PX = 9;

const putLine = (line: Element, from: ScreenPoint, to: ScreenPoint): void => {
  line.setAttribute("x1", String(from.x));
  line.setAttribute("y1", String(from.y));
  line.setAttribute("x2", String(to.x));
  line.setAttribute("y2", String(to.y));
};

/** Where each part of the ball lies, by its `data-part`. */
const ENDS: Readonly<
  Record<string, (from: ScreenPoint, to: ScreenPoint) => readonly [ScreenPoint, ScreenPoint]>
> = {
  thread: (from, to) => [from, to],
  start: (from) => [from, from],
  end: (_, to) => [to, to],
  falling: (_, { x, y }) => [
    { x: x - CROSS_PX, y: y - CROSS_PX },
    { x: x + CROSS_PX, y: y + CROSS_PX },
  ],
  rising: (_, { x, y }) => [
    { x: x - CROSS_PX, y: y + CROSS_PX },
    { x: x + CROSS_PX, y: y - CROSS_PX },
  ],
};

/**
 * The ball that is being drawn. Its places are written straight to the page at each movement, not drawn by React,
 * so that the thread keeps up with the finger on a slow phone; React only says what kind of ball it is. All parts are
 * lines, discs by their round ends: a line's places are no style, so that none is worked out anew. SPEC BN5.
 */
export const LiveShot = ({ map, drag, stroke, brush }: LiveShotProps) => {
  const group = useRef<SVGGElement>(null);
  const paint = useCallback(
    ({ from, to }: Drag): void => {
      const start = toScreen(map, from);
      const end = to ? toScreen(map, to) : start;
      for (const part of group.current?.children ?? []) {
        const ends = ENDS[part.getAttribute("data-part") ?? ""];
        if (ends) putLine(part, ...ends(start, end));
      }
    },
    [map],
  );
  useLayoutEffect(() => {
    const held = brush.current;
    held.paint = paint;
    paint(held.drag ?? drag);
    return () => {
      held.paint = undefined;
    };
  });
  return (
    <g ref={group} className={styles.thread} data-direction={stroke?.direction ?? "none"} data-weight="live">
      {drag.to && <line className={styles.halo} data-part="thread" />}
      {drag.to && <line data-part="thread" />}
      <line className={styles.ring} data-part="start" />
      <line className={styles.ringHole} data-part="start" />
      {drag.to && isSurelyOut(stroke) && <line className={styles.missed} data-part="falling" />}
      {drag.to && isSurelyOut(stroke) && <line className={styles.missed} data-part="rising" />}
      {drag.to && <line className={styles.fingerEdge} data-part="end" />}
      {drag.to && <line className={styles.finger} data-part="end" />}
      {drag.to && <line className={styles.tip} data-part="end" />}
    </g>
  );
};
