import type { Stroke } from "@courtloom/tennis";
import { type ReactNode, type RefObject, useCallback, useId, useLayoutEffect, useRef } from "react";
import styles from "./court.module.css";
import { type CourtMap, type ScreenPoint, toScreen } from "./court-map.ts";
import { crossPath, isSurelyOut } from "./drawn-shot.tsx";
import type { Brush, Drag } from "./use-drag.ts";

interface LiveShotProps {
  readonly map: CourtMap;
  readonly drag: Drag;
  /** Undefined for a touch. */
  readonly stroke: Stroke | undefined;
  readonly brush: RefObject<Brush>;
}

/** Around the place that is pointed at, and no larger than what it holds. */
const Mark = ({ id, children }: { readonly id: string; readonly children: ReactNode }) => (
  <marker id={id} markerUnits="userSpaceOnUse" overflow="visible" refX={0} refY={0}>
    {children}
  </marker>
);

const putLine = (line: Element, from: ScreenPoint, to: ScreenPoint): void => {
  line.setAttribute("x1", String(from.x));
  line.setAttribute("y1", String(from.y));
  line.setAttribute("x2", String(to.x));
  line.setAttribute("y2", String(to.y));
};

/**
 * The ball that is being drawn. Its places are written straight to the page at each movement, not drawn by React,
 * so that the thread keeps up with the finger on a slow phone; React only says what kind of ball it is. Two lines are
 * all that moves: their places are no style, so that none is worked out anew, and the discs at their ends are markers,
 * which go with them. SPEC BN5.
 */
export const LiveShot = ({ map, drag, stroke, brush }: LiveShotProps) => {
  const thread = useRef<SVGGElement>(null);
  const id = useId();
  const paint = useCallback(
    ({ from, to }: Drag): void => {
      const start = toScreen(map, from);
      const end = to ? toScreen(map, to) : start;
      for (const line of thread.current?.children ?? []) putLine(line, start, end);
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
    <g className={styles.thread} data-direction={stroke?.direction ?? "none"} data-weight="live">
      <Mark id={`${id}struck`}>
        <circle className={styles.struck} r={8} />
      </Mark>
      <Mark id={`${id}finger`}>
        <circle className={styles.finger} r={24} />
        <circle className={styles.tip} r={5} />
        {isSurelyOut(stroke) && <path className={styles.missed} d={crossPath(0, 0)} />}
      </Mark>
      <g ref={thread}>
        <line className={styles.halo} />
        <line markerStart={`url(#${id}struck)`} {...(drag.to ? { markerEnd: `url(#${id}finger)` } : {})} />
      </g>
    </g>
  );
};
