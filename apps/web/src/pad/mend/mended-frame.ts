import type { MatchView, ViewedPoint } from "@courtloom/match-log";
import type { PadLevel } from "../pad-settings.ts";
import type { PointFrame } from "../point-draft.ts";

/** What a charted point is drawn by when it is mended, and at which level. */
export interface MendedFrame {
  readonly frame: PointFrame;
  readonly level: Exclude<PadLevel, "score">;
}

/**
 * A point is mended as it was charted: at its level, of its player, from its seat, by the server whom the score
 * says. A point of which only the winner is known is charted as the pad charts now, or at every ball. SPEC PD85.
 */
export const mendedFrame = (
  { point, before, server, subjects }: ViewedPoint,
  { opened }: MatchView,
  now: PadLevel,
): MendedFrame | undefined => {
  if (opened.doubles) return undefined;
  const wanted = point.level === "score" ? now : point.level;
  const [subject] = subjects;
  const isKey = wanted === "key" && subject !== undefined;
  const { seat, endOfA } = point;
  return {
    frame: { server: before.server ?? server, seat, endOfA, ...(isKey ? { subject } : {}) },
    level: isKey ? "key" : "every",
  };
};
