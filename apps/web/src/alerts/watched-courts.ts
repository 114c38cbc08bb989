import { SIDES } from "@courtloom/core";
import type { Tile } from "@courtloom/protocol";
import type { Freshness } from "../board/freshness.ts";

/** Whether a court's figures are followed now: in play, heard, and an own player charted at a level that feeds them. */
export const isWatched = (
  { state, staff, own }: Pick<Tile, "state" | "staff" | "own">,
  freshness: Freshness["kind"],
): boolean =>
  state === "playing" &&
  freshness !== "blind" &&
  staff !== undefined &&
  staff.level !== "score" &&
  SIDES.some((side) => own?.[side] && staff.figures[side] !== null);

/** "No alerts. 5 courts are being watched." SPEC rule AS16. */
export const noAlertsWords = (watched: number): string => {
  if (watched === 0) return "No alerts. No court is being watched.";
  return `No alerts. ${watched} ${watched === 1 ? "court is" : "courts are"} being watched.`;
};
