import { type Channel, channelAt } from "./channel.ts";
import { BASELINE, type CourtPoint, JITTER } from "./court.ts";
import { someCornersDiffer } from "./jitter.ts";
import type { StrokePath } from "./striker-view.ts";

export const DIRECTIONS = ["line", "cross", "middle", "fromMiddle"] as const;

/** Where a ball was sent: down the line, cross-court, to the middle, or from the middle to a side. */
export type Direction = (typeof DIRECTIONS)[number];

/** SPEC G6: side to the same side, side to the other side, anything to the middle, middle to a side. */
export function directionBetween(from: Channel, to: Channel): Direction {
  if (to === "middle") return "middle";
  if (from === "middle") return "fromMiddle";
  return from === to ? "line" : "cross";
}

/**
 * The point by which a stroke's direction is judged: where it came down, and for a ball that ended at the
 * net (or within the drawing error beyond it, where no ball in play comes down) its line carried on to the far
 * baseline. `undefined` when it ended at the net without going forward, so that it has no direction. SPEC G7.
 */
export function aimOf(path: StrokePath): CourtPoint | undefined {
  const { from, to } = path;
  if (to.y >= JITTER) return to;
  const forward = to.y - from.y;
  if (forward <= 0) return undefined;
  return { x: from.x + ((to.x - from.x) * (BASELINE - from.y)) / forward, y: BASELINE };
}

export function directionOf(path: StrokePath): Direction | undefined {
  const aim = aimOf(path);
  if (aim === undefined) return undefined;
  return directionBetween(channelAt(path.from.x), channelAt(aim.x));
}

/** As below for a path that ends well beyond the net, whose direction follows from the two places across alone. */
function isAcrossCertain({ from, to }: StrokePath, direction: Direction): boolean {
  const [fromLeft, fromRight] = [channelAt(from.x - JITTER), channelAt(from.x + JITTER)];
  const [toLeft, toRight] = [channelAt(to.x - JITTER), channelAt(to.x + JITTER)];
  return (
    directionBetween(fromLeft, toLeft) === direction &&
    directionBetween(fromLeft, toRight) === direction &&
    directionBetween(fromRight, toLeft) === direction &&
    directionBetween(fromRight, toRight) === direction
  );
}

/** Whether every path within the drawing error has the same direction. SPEC G12. */
export function isDirectionCertain(path: StrokePath): boolean {
  const direction = directionOf(path);
  if (direction === undefined) return false;
  if (path.to.y >= 2 * JITTER) return isAcrossCertain(path, direction);
  return !someCornersDiffer(path.from, (from) =>
    someCornersDiffer(path.to, (to) => directionOf({ from, to }) !== direction),
  );
}
