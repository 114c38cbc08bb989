import type { Side } from "@courtloom/core";

/** Where the chartist sits: behind an end, or beside the court at the net. */
export type Seat = "behind" | "side";

/**
 * Which end side A plays, as the chartist sees it: `near` or `far` from a seat behind,
 * `left` or `right` from the side.
 */
export type EndSeen = "near" | "far" | "left" | "right";

/**
 * A place on the court as the chartist sees it, in whole centimetres from the middle of the net:
 * `right` to the chartist's right, `away` from the chartist. Behind an end the near baseline is
 * away = −1189; from the side the near sideline is away = −412 and the left baseline right = −1189.
 */
export interface SeenPoint {
  readonly right: number;
  readonly away: number;
}

/** A stroke exactly as it was drawn; everything else about it is derived. SPEC rule G1. */
export interface RawStroke {
  readonly seat: Seat;
  /** The end of side A when the stroke was drawn. */
  readonly endOfA: EndSeen;
  readonly striker: Side;
  readonly from: SeenPoint;
  readonly to: SeenPoint;
}
