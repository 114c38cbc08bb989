import type { ByPlayer } from "@courtloom/core";
import { memo } from "react";
import styles from "./court.module.css";
import { type CourtMap, toScreen } from "./court-map.ts";
import { courtPaths, zoneWords } from "./court-shapes.ts";
import { EndNames } from "./end-names.tsx";
import type { PointFrame } from "./point-draft.ts";
import { sideAtFirstEnd } from "./shown-ends.ts";

interface CourtGroundProps {
  readonly map: CourtMap;
  readonly names: ByPlayer<string>;
  readonly frame: PointFrame;
  readonly width: number;
  readonly height: number;
}

/** Lines, net, words and names: nothing of it changes while a finger draws, so a movement does not make it anew. */
export const CourtGround = memo(({ map, names, frame, width, height }: CourtGroundProps) => {
  const paths = courtPaths(map);
  const first = sideAtFirstEnd(frame.endOfA);
  return (
    <>
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
    </>
  );
});
CourtGround.displayName = "CourtGround";
