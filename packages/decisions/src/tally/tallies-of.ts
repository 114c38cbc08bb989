import { type ByPlayer, SIDES, type Side } from "@courtloom/core";
import { CHARTING_LEVELS, type MatchView } from "@courtloom/match-log";
import { countMatch } from "../figures/count-match.ts";
import type { CellCounting, Counting, PlayerCounting } from "../figures/counting.ts";
import { FIGURE_NAMES } from "../figures/registry.ts";
import { cellKey } from "./cell-key.ts";
import type { LevelTally, Tally, TallyCell, TallyCount, TallyLevel, TallyName } from "./tally.ts";
import { isToldByCells } from "./tally-count.ts";

const toCount = ({ hits, others }: Counting): TallyCount => [hits.length, hits.length + others.length];

const NONE: TallyCount = [0, 0];

const countsOf = ({ figures }: PlayerCounting): [TallyName, TallyCount][] =>
  FIGURE_NAMES.flatMap((name, place): [TallyName, TallyCount][] => {
    const figure = figures[place];
    const count = figure ? toCount(figure.all) : NONE;
    if (!figure || count[1] === 0) return [];
    const told = isToldByCells(name) ? [] : [...figure.parts];
    return [
      [name, count],
      ...told.map(([part, of]): [TallyName, TallyCount] => [`${name}.${part}`, toCount(of)]),
    ];
  });

const cellOf = ({ n, missed, won, lost, points, against }: CellCounting): TallyCell => [
  n,
  missed.length,
  won.length,
  lost.length,
  points,
  against.length,
];

/** Members in the order of their names, so that equal tallies are written alike. */
const sorted = <V>(members: readonly (readonly [string, V])[]): Record<string, V> =>
  Object.fromEntries([...members].sort(([a], [b]) => (a < b ? -1 : 1)));

const levelOf = (mine: PlayerCounting): LevelTally | undefined => {
  const counts = countsOf(mine);
  if (counts.length === 0) return undefined;
  const cells = [...mine.cells.values()].map((cell) => [cellKey(cell), cellOf(cell)] as const);
  return { counts: sorted(counts), cells: sorted(cells) };
};

/**
 * The tallies of a match: its figures as counts, each level counted by itself; `undefined` for a side without
 * figures. SPEC D7, D38.
 */
export const talliesOf = (view: MatchView): ByPlayer<Tally | undefined> => {
  const levels: Record<Side, Partial<Record<TallyLevel, LevelTally>> | undefined> = {
    A: undefined,
    B: undefined,
  };
  for (const level of CHARTING_LEVELS) {
    const counting = countMatch(view, level);
    for (const side of SIDES) {
      const mine = counting[side];
      if (!mine) continue;
      const told = levelOf(mine);
      levels[side] = { ...levels[side], ...(told ? { [level]: told } : {}) };
    }
  }
  const toTally = (side: Side): Tally | undefined => {
    const told = levels[side];
    return told && { version: 2, levels: told };
  };
  return { A: toTally("A"), B: toTally("B") };
};
