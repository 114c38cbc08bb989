import type { Stroke } from "@courtloom/tennis";
import { type RefObject, useCallback, useLayoutEffect, useRef } from "react";
import styles from "./court.module.css";
import { type CourtMap, toScreen } from "./court-map.ts";
import { crossPath, isSurelyOut, threadPath } from "./drawn-shot.tsx";
import type { Drag, PaintDrag } from "./use-drag.ts";

interface LiveShotProps {
  readonly map: CourtMap;
  readonly drag: Drag;
  /** Undefined for a touch. */
  readonly stroke: Stroke | undefined;
  /** Where whoever follows the finger finds how to paint it. */
  readonly painter: RefObject<PaintDrag | undefined>;
}

/**
 * The ball that is being drawn. Its places are written straight to the page at each movement, not drawn by React,
 * so that the thread keeps up with the finger on a slow phone; React only says what kind of ball it is. SPEC BN5.
 */
export const LiveShot = ({ map, drag, stroke, painter }: LiveShotProps) => {
  const group = useRef<SVGGElement>(null);
  const paint = useCallback<PaintDrag>(
    ({ from, to }) => {
      const start = toScreen(map, from);
      const end = to && toScreen(map, to);
      for (const part of group.current?.children ?? []) {
        const role = part.getAttribute("data-part");
        if (role === "end" && end) part.setAttribute("transform", `translate(${end.x} ${end.y})`);
        else if (role === "start") part.setAttribute("transform", `translate(${start.x} ${start.y})`);
        else if (end) part.setAttribute("d", threadPath(start, end));
      }
    },
    [map],
  );
  useLayoutEffect(() => {
    painter.current = paint;
    paint(drag);
    return () => {
      painter.current = undefined;
    };
  });
  return (
    <g ref={group} className={styles.thread} data-direction={stroke?.direction ?? "none"} data-weight="live">
      {drag.to && <path className={styles.halo} />}
      {drag.to && <path />}
      <circle className={styles.struck} data-part="start" r={8} />
      {drag.to && <circle className={styles.finger} data-part="end" r={24} />}
      {drag.to && <circle className={styles.tip} data-part="end" r={5} />}
      {drag.to && isSurelyOut(stroke) && (
        <path className={styles.missed} data-part="end" d={crossPath(0, 0)} />
      )}
    </g>
  );
};
