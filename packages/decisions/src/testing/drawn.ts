import type { Side } from "@courtloom/core";
import type { Shot } from "@courtloom/match-log";
import { type CourtPoint, seenFrom } from "@courtloom/tennis";

/** Places that tests draw from and to, in the striker's own metres. */
export const DEUCE_CORNER: CourtPoint = { x: 3, y: -12 };
export const AD_CORNER: CourtPoint = { x: -3, y: -12 };
export const LEFT_DEEP: CourtPoint = { x: -2.8, y: 9 };
export const RIGHT_DEEP: CourtPoint = { x: 2.8, y: 9 };

/** A drawn ball as seen from behind the end at which side A plays. */
export const drawn = (
  striker: Side,
  from: CourtPoint,
  to: CourtPoint,
  answers: Partial<Omit<Shot, "striker" | "from" | "to">> = {},
): Shot => ({ striker, ...seenFrom({ from, to }, { seat: "behind", endOfA: "near", striker }), ...answers });

/** A ball kept: only where it was struck. */
export const touch = (
  striker: Side,
  from: CourtPoint,
  answers: Partial<Omit<Shot, "striker" | "from" | "to">> = {},
): Shot => {
  const { to: _, ...kept } = drawn(striker, from, LEFT_DEEP, answers);
  return kept;
};
