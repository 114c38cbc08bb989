import type { ChartingLevel, Entry, MatchView } from "@courtloom/match-log";
import { PAD_LEVELS, type PadLevel } from "./pad-settings.ts";

/** The level that a lane charts at now: what it was opened with, until a change of level in it. */
export const laneLevel = (openedAt: ChartingLevel, entries: readonly Entry[]): ChartingLevel => {
  const changed = entries.findLast((entry) => entry.body.kind === "LevelChanged");
  return changed?.body.kind === "LevelChanged" ? changed.body.level : openedAt;
};

/** Levels that a match can be charted at: doubles for the score only, key balls where somebody is charted. SPEC PD23. */
export const levelsFor = (view: MatchView | undefined): readonly PadLevel[] => {
  if (view?.opened.doubles) return ["score"];
  return view?.subjects.length === 0 ? ["score", "every"] : PAD_LEVELS;
};

/** The wanted level where the match has it, else score only. */
export const levelIn = (view: MatchView | undefined, wanted: ChartingLevel): PadLevel =>
  levelsFor(view).find((level) => level === wanted) ?? "score";
