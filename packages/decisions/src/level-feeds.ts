import type { ChartingLevel } from "@courtloom/match-log";
import type { PlayerFigures } from "./figures.ts";

export type FigureName = keyof PlayerFigures;

/** Which charting level may feed which figure; the one place that decides. SPEC D2. */
const FEEDS: Readonly<Record<FigureName, readonly ChartingLevel[]>> = {
  lineMissed: ["key", "every"],
  lineShare: ["key", "every"],
};

export const feeds = (figure: FigureName, level: ChartingLevel): boolean => FEEDS[figure].includes(level);
