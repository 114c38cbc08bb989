import type { Seat } from "@courtloom/tennis";
import { useState } from "react";
import type { StripText } from "../strip.tsx";
import type { Drag } from "../use-drag.ts";
import { type CourtCell, placeOfCell, sayCell } from "./court-cells.ts";

export interface KeyedBall {
  /** What is drawn of it so far: where it was struck. */
  readonly drag: Drag | undefined;
  /** What the strip says meanwhile. */
  readonly text: StripText | undefined;
  /**
   * The first key says where a ball was struck, the second where it went. The same key again is a touch there;
   * another of the same half moves the place, as no ball comes down where it was struck from. SPEC PD65.
   */
  readonly press: (cell: CourtCell) => void;
  readonly cancel: () => void;
}

/** A ball that is being drawn by keys; a whole one is handed on like one that a finger drew. */
export const useKeyedBall = (seat: Seat, onDrawn: (drag: Drag) => void): KeyedBall => {
  const [struck, setStruck] = useState<CourtCell>();
  const press = (cell: CourtCell): void => {
    const isMoved = struck?.half === cell.half && struck.code !== cell.code;
    setStruck(!struck || isMoved ? cell : undefined);
    if (!struck || isMoved) return;
    const from = placeOfCell(struck, seat, "struck");
    onDrawn(struck.code === cell.code ? { from } : { from, to: placeOfCell(cell, seat, "went") });
  };
  return {
    drag: struck && { from: placeOfCell(struck, seat, "struck") },
    text: struck && {
      lead: `Struck ${sayCell(struck, seat)}.`,
      aside: "Where did it go? Same key: kept",
    },
    press,
    cancel: () => setStruck(undefined),
  };
};
