import type { ByPlayer } from "@courtloom/core";
import type { Shot } from "@courtloom/match-log";
import type { Stroke } from "@courtloom/tennis";
import type { SVGProps } from "react";
import styles from "./court.module.css";
import { type CourtMap, toScreen } from "./court-map.ts";
import { courtPaths, zoneWords } from "./court-shapes.ts";
import { DrawnShot } from "./drawn-shot.tsx";
import { EndNames } from "./end-names.tsx";
import type { PointFrame } from "./point-draft.ts";
import { strokeOf } from "./read-draft.ts";
import { sideAtFirstEnd } from "./shown-ends.ts";
import type { Drag } from "./use-drag.ts";

interface CourtDrawingProps {
  readonly map: CourtMap;
  readonly names: ByPlayer<string>;
  readonly frame: PointFrame;
  readonly shots: readonly Shot[];
  /** The shot that is drawn strongest: the one being mended, or the last. */
  readonly top: number;
  readonly live: { readonly drag: Drag; readonly stroke: Stroke | undefined } | undefined;
  readonly handlers: SVGProps<SVGSVGElement>;
  readonly width: number;
  readonly height: number;
}

/** Threads shown beside the strongest: two balls tell the way of the rally, more tangle. */
const SHOWN = 3;

/**
 * The court as the chartist sees it, 1:1 in CSS pixels. `data-map` holds the numbers of `CourtMap`, so that
 * whatever drives the page can turn centimetres into pixels.
 */
export const CourtDrawing = (props: CourtDrawingProps) => {
  const { map, names, frame, shots, top, live, handlers, width, height } = props;
  const paths = courtPaths(map);
  const first = sideAtFirstEnd(frame.endOfA);
  const drawn = shots
    .map((shot, place) => ({ id: `ball ${place}`, shot, place }))
    .filter(({ place }) => place === top || place > shots.length - SHOWN);
  return (
    <svg
      className={styles.courtDrawing}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="application"
      aria-label="Court. Drag from where the ball was struck to where it went."
      data-testid="court"
      data-map={JSON.stringify(map)}
      data-end-of-a={frame.endOfA}
      {...handlers}
    >
      <path className={styles.chalk} d={paths.lines} />
      <path className={styles.net} d={paths.net} />
      {zoneWords(map).map(({ word, at }) => {
        const { x, y } = toScreen(map, at);
        return (
          <text key={`${word} ${at.right}`} className={styles.zone} x={x} y={y + 5}>
            {word}
          </text>
        );
      })}
      <EndNames
        seat={frame.seat}
        width={width}
        height={height}
        first={names[first]}
        second={names[first === "A" ? "B" : "A"]}
      />
      {drawn.map(({ id, shot, place }) => (
        <DrawnShot
          key={id}
          map={map}
          drag={shot}
          stroke={strokeOf(shot, frame)}
          weight={place === top && !live ? "last" : "old"}
        />
      ))}
      {live && <DrawnShot map={map} drag={live.drag} stroke={live.stroke} weight="live" />}
    </svg>
  );
};
