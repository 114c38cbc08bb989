import type { ChartingLevel, Entry } from "@courtloom/match-log";

/** The level that a lane charts at now: what it was opened with, until a change of level in it. */
export const laneLevel = (openedAt: ChartingLevel, entries: readonly Entry[]): ChartingLevel => {
  const changed = entries.findLast((entry) => entry.body.kind === "LevelChanged");
  return changed?.body.kind === "LevelChanged" ? changed.body.level : openedAt;
};
