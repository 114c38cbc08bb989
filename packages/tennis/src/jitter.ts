import { type CourtPoint, JITTER } from "./court.ts";

const SIGNS = [-JITTER, JITTER] as const;

/** Whether `differs` holds at any of the four points that lie the drawing error away in both coordinates. */
export const someCornersDiffer = (point: CourtPoint, differs: (corner: CourtPoint) => boolean): boolean =>
  SIGNS.some((dx) => SIGNS.some((dy) => differs({ x: point.x + dx, y: point.y + dy })));
