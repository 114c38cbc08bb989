import { importancesOf, type ServeBefore, type WeighedChoice } from "@courtloom/decisions";
import type { ReadMatch } from "./read-history.ts";

interface PickedChoices {
  readonly balls: readonly WeighedChoice[];
  /** Matches with a point charted at every ball. */
  readonly matches: number;
}

/** The choices that a filter lets through; with `serve` each with how much of its match rested on the point, else 0. */
export const pickedChoices = (matches: readonly ReadMatch[], serve?: ServeBefore): PickedChoices => {
  const every = matches.filter(({ picked }) => picked.told.has("every"));
  const balls = every.flatMap(({ folded, row, picked }) => {
    const choices = folded.choices(row.side).filter(({ pointId }) => picked.levelOf.has(pointId));
    const importances = serve && choices.length > 0 ? importancesOf(folded.view, serve) : [];
    return choices.map((ball) => ({ ...ball, importance: importances[ball.at] ?? 0 }));
  });
  return { balls, matches: every.length };
};
