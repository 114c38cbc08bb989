import { isKept, isLineBall, spotOf } from "../balls/strokes.ts";
import { FIGURES, type FigureName } from "../figures/registry.ts";
import { type CellKey, parseCellKey, type TallyCellOf } from "./cell-key.ts";
import type { LevelTally, Tally, TallyCell, TallyLevel, TallyName } from "./tally.ts";
import { TALLY_LEVELS } from "./tally.ts";

/** Figures whose parts are spots; a tally keeps them once, as cells. */
const SPOT_FIGURES = ["lineMissed", "lineShare", "keptMissed"] as const satisfies readonly FigureName[];
export type SpotFigure = (typeof SPOT_FIGURES)[number];

export const isToldByCells = (figure: FigureName): boolean => SPOT_FIGURES.some((each) => each === figure);

/** x of n of a tally; n = 0 where nothing was counted. */
export interface SummedCount {
  readonly x: number;
  readonly n: number;
}

const NONE: SummedCount = { x: 0, n: 0 };

/** Levels that a figure may be added up over: those that feed it, and counts of before levels were told apart. SPEC D2. */
const levelsFor = (figure: FigureName, only: readonly TallyLevel[]): readonly TallyLevel[] =>
  only.filter((level) => level === "unknown" || FIGURES[figure].levels.includes(level));

const summed = (
  tally: Tally,
  levels: readonly TallyLevel[],
  count: (told: LevelTally) => SummedCount,
): SummedCount =>
  levels.reduce((sum, level) => {
    const told = tally.levels[level];
    const { x, n } = told ? count(told) : NONE;
    return { x: sum.x + x, n: sum.n + n };
  }, NONE);

/** Every cell of one level, with what it is about. */
export const tallyCells = (
  tally: Tally,
  level: TallyLevel,
): readonly { readonly of: TallyCellOf; readonly cell: TallyCell }[] =>
  Object.entries(tally.levels[level]?.cells ?? {}).flatMap(([key, cell]: [CellKey, TallyCell]) => {
    const of = parseCellKey(key);
    return of ? [{ of, cell }] : [];
  });

const ofCell: Readonly<Record<SpotFigure, (of: TallyCellOf, cell: TallyCell) => SummedCount>> = {
  lineMissed: (of, [n, missed]) => (isLineBall({ kind: "groundstroke", ...of }) ? { x: missed, n } : NONE),
  lineShare: (of, [n]) => ({ x: isLineBall({ kind: "groundstroke", ...of }) ? n : 0, n }),
  keptMissed: (of, [n, missed]) => (isKept(of) ? { x: missed, n } : NONE),
};

const atSpot = (tally: Tally, figure: SpotFigure, spot: string, levels: readonly TallyLevel[]): SummedCount =>
  levels
    .flatMap((level) => tallyCells(tally, level))
    .filter(({ of }) => spotOf(of) === spot)
    .map(({ of, cell }) => ofCell[figure](of, cell))
    .reduce((sum, { x, n }) => ({ x: sum.x + x, n: sum.n + n }), NONE);

const nameOf = (figure: FigureName, part: string | undefined): TallyName =>
  part === undefined ? figure : `${figure}.${part}`;

const isSpotFigure = (figure: FigureName): figure is SpotFigure => isToldByCells(figure);

/**
 * x of n of a figure, or of one of its parts (a spot for line figures), over the given levels (all, unless told)
 * that may feed it. SPEC D39.
 */
export const tallyCount = (
  tally: Tally,
  figure: FigureName,
  { part, levels = TALLY_LEVELS }: { readonly part?: string; readonly levels?: readonly TallyLevel[] } = {},
): SummedCount => {
  const feeding = levelsFor(figure, levels);
  if (part !== undefined && isSpotFigure(figure)) return atSpot(tally, figure, part, feeding);
  return summed(tally, feeding, ({ counts }) => {
    const [x, n] = counts[nameOf(figure, part)] ?? [0, 0];
    return { x, n };
  });
};
