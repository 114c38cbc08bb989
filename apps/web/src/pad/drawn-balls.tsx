import type { Shot } from "@courtloom/match-log";
import { memo } from "react";
import type { CourtMap } from "./court-map.ts";
import { DrawnShot } from "./drawn-shot.tsx";
import type { PointFrame } from "./point-draft.ts";
import { strokeOf } from "./read-draft.ts";

interface DrawnBallsProps {
  readonly map: CourtMap;
  readonly frame: PointFrame;
  readonly shots: readonly Shot[];
  /** The shot that is drawn strongest: the one being mended, or the last. */
  readonly top: number;
  /** A finger draws: none of these is the strongest meanwhile. */
  readonly isDrawing: boolean;
}

/** Threads shown beside the strongest: two balls tell the way of the rally, more tangle. */
const SHOWN = 3;

/** The balls that are charted already; a movement of the finger does not make them anew. */
export const DrawnBalls = memo(({ map, frame, shots, top, isDrawing }: DrawnBallsProps) =>
  shots
    .map((shot, place) => ({ id: `ball ${place}`, shot, place }))
    .filter(({ place }) => place === top || place > shots.length - SHOWN)
    .map(({ id, shot, place }) => (
      <DrawnShot
        key={id}
        map={map}
        drag={shot}
        stroke={strokeOf(shot, frame)}
        weight={place === top && !isDrawing ? "last" : "old"}
      />
    )),
);
DrawnBalls.displayName = "DrawnBalls";
