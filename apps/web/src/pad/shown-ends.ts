import type { Side } from "@courtloom/core";
import { type EndSeen, endFrom, type Seat } from "@courtloom/tennis";

/**
 * How the court is drawn: from behind an end, from the side, or with the charted player always at the
 * near end, whichever end that is.
 */
export const SEAT_CHOICES = ["behind", "side", "alwaysNear"] as const;
export type SeatChoice = (typeof SEAT_CHOICES)[number];

/** Whom "always near" keeps near: the charted player, A when both or none are charted. */
export const nearSide = (subjects: readonly Side[]): Side =>
  subjects.length === 1 && subjects[0] ? subjects[0] : "A";

export const seatOf = (choice: SeatChoice): Seat => (choice === "side" ? "side" : "behind");

/** The end of side A in the drawing; `undefined` until somebody said who is where. */
export const shownEndOfA = (
  choice: SeatChoice,
  endOfA: EndSeen | undefined,
  subjects: readonly Side[],
): EndSeen | undefined => {
  if (choice === "alwaysNear") return nearSide(subjects) === "A" ? "near" : "far";
  return endOfA && endFrom(seatOf(choice), endOfA);
};

/** Who is at the near (or left) end of the drawing. */
export const sideAtFirstEnd = (endOfA: EndSeen): Side => (endOfA === "near" || endOfA === "left" ? "A" : "B");
