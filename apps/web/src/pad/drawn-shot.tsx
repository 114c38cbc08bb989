import type { Stroke } from "@courtloom/tennis";
import styles from "./court.module.css";
import { type CourtMap, type ScreenPoint, toScreen } from "./court-map.ts";
import type { Drag } from "./use-drag.ts";

interface DrawnShotProps {
  readonly map: CourtMap;
  readonly drag: Drag;
  /** Undefined for a touch. */
  readonly stroke: Stroke | undefined;
  readonly weight: "old" | "last";
}

const arrow = (x: number, y: number, angle: number, size: number): string => {
  const at = (turn: number) =>
    `${(x - size * Math.cos(angle + turn)).toFixed(1)} ${(y - size * Math.sin(angle + turn)).toFixed(1)}`;
  return `M${at(0.5)}L${x.toFixed(1)} ${y.toFixed(1)}L${at(-0.5)}`;
};

const threadPath = (from: ScreenPoint, to: ScreenPoint): string => `M${from.x} ${from.y}L${to.x} ${to.y}`;

/** A cross where a ball was missed, in CSS pixels. */
export const crossPath = (x: number, y: number): string => `M${x - 9} ${y - 9}l18 18m0 -18l-18 18`;

/** Ended net, wide or long whatever the error of drawing. */
export const isSurelyOut = (stroke: Stroke | undefined): boolean =>
  stroke !== undefined && stroke.ended !== "in" && stroke.isEndedCertain;

/** One ball on the court: a ring where it was struck, a thread to where it went, a cross where it was missed. */
export const DrawnShot = ({ map, drag, stroke, weight }: DrawnShotProps) => {
  const from = toScreen(map, drag.from);
  const to = drag.to && toScreen(map, drag.to);
  return (
    <g className={styles.thread} data-direction={stroke?.direction ?? "none"} data-weight={weight}>
      {to && (
        <>
          <path className={styles.halo} d={threadPath(from, to)} />
          <path d={threadPath(from, to)} />
          {isSurelyOut(stroke) ? (
            <path className={styles.missed} d={crossPath(to.x, to.y)} />
          ) : (
            <path d={arrow(to.x, to.y, Math.atan2(to.y - from.y, to.x - from.x), 13)} />
          )}
        </>
      )}
      <circle className={styles.struck} cx={from.x} cy={from.y} r={weight === "old" ? 5 : 8} />
    </g>
  );
};
