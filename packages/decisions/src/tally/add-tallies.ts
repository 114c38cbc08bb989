import type { LevelTally, Tally, TallyCell, TallyCount, TallyLevel } from "./tally.ts";
import { EMPTY_TALLY, TALLY_LEVELS } from "./tally.ts";

/** Adds member by member; a name that only one has keeps its numbers. Names are put in order, so that equal is identical. */
const addMembers = <T>(
  a: Readonly<Record<string, T | undefined>>,
  b: Readonly<Record<string, T | undefined>>,
  add: (mine: T, theirs: T) => T,
): Record<string, T> => {
  const sums: Record<string, T> = {};
  for (const name of [...new Set([...Object.keys(a), ...Object.keys(b)])].sort()) {
    const [mine, theirs] = [a[name], b[name]];
    const sum = mine !== undefined && theirs !== undefined ? add(mine, theirs) : (mine ?? theirs);
    if (sum !== undefined) sums[name] = sum;
  }
  return sums;
};

const addCounts = (a: TallyCount, b: TallyCount): TallyCount => [a[0] + b[0], a[1] + b[1]];

const addCells = (a: TallyCell, b: TallyCell): TallyCell => [
  a[0] + b[0],
  a[1] + b[1],
  a[2] + b[2],
  a[3] + b[3],
  a[4] + b[4],
  a[5] + b[5],
];

const addLevels = (a: LevelTally | undefined, b: LevelTally | undefined): LevelTally => ({
  counts: addMembers(a?.counts ?? {}, b?.counts ?? {}, addCounts),
  cells: addMembers(a?.cells ?? {}, b?.cells ?? {}, addCells),
});

/** The tally of both: in any order and grouping the same; `EMPTY_TALLY` changes nothing. SPEC D38. */
export const addTallies = (a: Tally, b: Tally): Tally => {
  const levels: Partial<Record<TallyLevel, LevelTally>> = {};
  for (const level of TALLY_LEVELS) {
    if (a.levels[level] || b.levels[level]) levels[level] = addLevels(a.levels[level], b.levels[level]);
  }
  return { version: 2, levels };
};

export const sumTallies = (tallies: Iterable<Tally>): Tally => {
  let sum = EMPTY_TALLY;
  for (const tally of tallies) sum = addTallies(sum, tally);
  return sum;
};
