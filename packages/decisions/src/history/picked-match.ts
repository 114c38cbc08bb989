import type { ChartingLevel, LeftOut, MatchView, ViewedPoint } from "@courtloom/match-log";
import type { Count, PlayerFigures } from "../figures/figures.ts";
import { reach } from "../reach.ts";

/** One player's figures of one match, and those of its points that count. */
export interface PickedMatch {
  readonly figures: PlayerFigures;
  /** Level of each point that counts, by its id. */
  readonly levelOf: ReadonlyMap<string, ChartingLevel>;
  /** How many of them each level told, and of how many the net cord or a disputed call decided. */
  readonly told: ReadonlyMap<ChartingLevel, ToldPoints>;
}

export interface ToldPoints {
  points: number;
  readonly leftOut: Record<LeftOut, number>;
}

const freshTold = (): ToldPoints => ({ points: 0, leftOut: { netCord: 0, calledOut: 0 } });

/** The points of a match that `keeps` lets through, with what the player's figures say of them. SPEC HF2. */
export const pickMatch = (
  view: MatchView,
  figures: PlayerFigures,
  keeps: (point: ViewedPoint) => boolean,
): PickedMatch => {
  const levelOf = new Map<string, ChartingLevel>();
  const told = new Map<ChartingLevel, ToldPoints>();
  for (const viewed of view.points) {
    if (!keeps(viewed)) continue;
    const { level, shots } = viewed.point;
    levelOf.set(viewed.id, level);
    const sum = reach(told, level, freshTold);
    sum.points += 1;
    const why = shots.find(({ leftOut }) => leftOut !== undefined)?.leftOut;
    if (why) sum.leftOut[why] += 1;
  }
  return { figures, levelOf, told };
};

/** x of n of a count over the points that count, by their level; levels without an attempt are absent. */
export const countPicked = (
  { levelOf }: Pick<PickedMatch, "levelOf">,
  { hits, others }: Count,
): ReadonlyMap<ChartingLevel, { x: number; n: number }> => {
  const byLevel = new Map<ChartingLevel, { x: number; n: number }>();
  const add = (id: string, x: 0 | 1): void => {
    const level = levelOf.get(id);
    if (level === undefined) return;
    const sum = reach(byLevel, level, () => ({ x: 0, n: 0 }));
    sum.x += x;
    sum.n += 1;
  };
  for (const id of hits) add(id, 1);
  for (const id of others) add(id, 0);
  return byLevel;
};
