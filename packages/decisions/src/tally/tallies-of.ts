import { type ByPlayer, byPlayer } from "@courtloom/core";
import { CHARTING_LEVELS, type ChartingLevel, type MatchView } from "@courtloom/match-log";
import { countMatch } from "../figures/count-match.ts";
import { type CellCounting, type Counting, LEVEL_PLACES, type PlayerCounting } from "../figures/counting.ts";
import { cellKey } from "./cell-key.ts";
import type { LevelTally, Tally, TallyCell, TallyCount, TallyLevel, TallyName } from "./tally.ts";
import { isToldByCells } from "./tally-count.ts";

const countAt = ({ x, n }: Counting, level: ChartingLevel): TallyCount | undefined => {
  const place = LEVEL_PLACES[level];
  const of = n[place] ?? 0;
  return of > 0 ? [x[place] ?? 0, of] : undefined;
};

const namesOf = function* ({ figures, parts }: PlayerCounting): Generator<[TallyName, Counting]> {
  yield* figures;
  for (const [name, of] of parts) {
    if (isToldByCells(name)) continue;
    for (const [part, counting] of of) yield [`${name}.${part}`, counting];
  }
};

const cellOf = ({ n, missed, won, lost, points, against }: CellCounting): TallyCell => [
  n,
  missed.length,
  won.length,
  lost.length,
  points,
  against.length,
];

const sorted = <V>(members: readonly (readonly [string, V])[]): Record<string, V> =>
  Object.fromEntries([...members].sort(([a], [b]) => (a < b ? -1 : 1)));

const levelOf = (mine: PlayerCounting, level: ChartingLevel): LevelTally | undefined => {
  const counts: [TallyName, TallyCount][] = [];
  for (const [name, counting] of namesOf(mine)) {
    const count = countAt(counting, level);
    if (count) counts.push([name, count]);
  }
  if (counts.length === 0) return undefined;
  const cells = [...mine.cells.values()].filter((cell) => cell.level === level);
  return { counts: sorted(counts), cells: sorted(cells.map((cell) => [cellKey(cell), cellOf(cell)])) };
};

const toTally = (mine: PlayerCounting): Tally => {
  const levels: Partial<Record<TallyLevel, LevelTally>> = {};
  for (const level of CHARTING_LEVELS) {
    const told = levelOf(mine, level);
    if (told) levels[level] = told;
  }
  return { version: 2, levels };
};

/** The tallies of a match: its figures as counts, each level by itself; `undefined` for a side without figures. SPEC D7, D38. */
export const talliesOf = (view: MatchView): ByPlayer<Tally | undefined> => {
  const counting = countMatch(view);
  return byPlayer((side) => {
    const mine = counting[side];
    return mine && toTally(mine);
  });
};
