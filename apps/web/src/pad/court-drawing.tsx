import type { ByPlayer } from "@courtloom/core";
import type { Shot } from "@courtloom/match-log";
import type { Stroke } from "@courtloom/tennis";
import type { RefObject, SVGProps } from "react";
import styles from "./court.module.css";
import { CourtGround } from "./court-ground.tsx";
import type { CourtMap } from "./court-map.ts";
import { DrawnBalls } from "./drawn-balls.tsx";
import { LiveShot } from "./live-shot.tsx";
import type { PointFrame } from "./point-draft.ts";
import type { Brush, Drag } from "./use-drag.ts";

interface CourtDrawingProps {
  readonly map: CourtMap;
  readonly names: ByPlayer<string>;
  readonly frame: PointFrame;
  readonly shots: readonly Shot[];
  /** The shot that is drawn strongest: the one being mended, or the last. */
  readonly top: number;
  readonly live: { readonly drag: Drag; readonly stroke: Stroke | undefined } | undefined;
  readonly surface: RefObject<SVGSVGElement | null>;
  readonly brush: RefObject<Brush>;
  readonly handlers: SVGProps<SVGSVGElement>;
  readonly width: number;
  readonly height: number;
}

/**
 * The court as the chartist sees it, 1:1 in CSS pixels. `data-map` holds the numbers of `CourtMap`, so that
 * whatever drives the page can turn centimetres into pixels.
 */
export const CourtDrawing = (props: CourtDrawingProps) => {
  const { map, names, frame, shots, top, live, surface, brush, handlers, width, height } = props;
  return (
    <svg
      ref={surface}
      className={styles.courtDrawing}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="application"
      aria-label="Court. Drag from where the ball was struck to where it went, or press two letters. Question mark shows the keys."
      data-testid="court"
      data-map={JSON.stringify(map)}
      data-end-of-a={frame.endOfA}
      {...handlers}
    >
      <CourtGround {...{ map, names, frame, width, height }} />
      <DrawnBalls {...{ map, frame, shots, top }} isDrawing={live !== undefined} />
      {live && <LiveShot map={map} drag={live.drag} stroke={live.stroke} brush={brush} />}
    </svg>
  );
};
