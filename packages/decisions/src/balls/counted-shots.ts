import type { ByPlayer } from "@courtloom/core";
import type { ViewedPoint } from "@courtloom/match-log";
import type { Hand } from "@courtloom/tennis";
import { feeds } from "../figures/registry.ts";
import { type ReadShot, readShots } from "../read-shots.ts";

/** A ball that the line figures count. */
export interface CountedShot extends ReadShot {
  /** Its place in the point. */
  readonly place: number;
  readonly isLine: boolean;
}

/** A groundstroke whose outcome nobody disputes, kept (a touch) or drawn with a direction. SPEC D3, D4, D10. */
const counts = ({ shot, kind, stroke }: ReadShot): boolean =>
  kind === "groundstroke" &&
  shot.leftOut === undefined &&
  (stroke === undefined || stroke.direction !== undefined);

/**
 * The balls of a point that the line figures stand on, of both players, in order; none where the level feeds
 * none. At key balls those of the players charted then, as the others' were not all charted. SPEC D2, D10.
 */
export const countedShots = (viewed: ViewedPoint, hands: ByPlayer<Hand>): readonly CountedShot[] => {
  const { level } = viewed.point;
  if (!feeds("lineShare", level)) return [];
  return readShots(viewed, hands)
    .map((read, place) => ({ ...read, place, isLine: read.stroke?.direction === "line" }))
    .filter((read) => counts(read) && (level === "every" || viewed.subjects.includes(read.shot.striker)));
};
