import { CHARTING_LEVELS, type ChartingLevel, type LeftOut } from "@courtloom/match-log";
import { FIGURES, type FigureName, feeds } from "../figures/registry.ts";
import { reach } from "../reach.ts";
import type { SummedCount } from "../tally/tally-count.ts";
import { countPicked, type PickedMatch } from "./picked-match.ts";

/** A figure over several matches of a player. */
export interface HistoryFigure extends SummedCount {
  /** In how many matches anything was counted. */
  readonly matches: number;
  /** What each level told, coarsest first; those without an attempt are absent. */
  readonly levels: readonly (SummedCount & { readonly level: ChartingLevel })[];
  /** Points that no attempt is counted in, and why; reasons without one are absent. */
  readonly leftOut: readonly { readonly why: "level" | LeftOut; readonly points: number }[];
  /** Parts that were met, in the order of their names. */
  readonly parts: readonly (SummedCount & { readonly part: string })[];
}

type Sum = { x: number; n: number };

const freshSum = (): Sum => ({ x: 0, n: 0 });

const addTo = (sum: Sum, { x, n }: SummedCount): void => {
  sum.x += x;
  sum.n += n;
};

const leftOutOf = (matches: readonly PickedMatch[], name: FigureName): HistoryFigure["leftOut"] => {
  const points = { level: 0, netCord: 0, calledOut: 0 };
  for (const { told } of matches) {
    for (const [level, of] of told) {
      if (!feeds(name, level)) points.level += of.points;
      else {
        points.netCord += of.leftOut.netCord;
        points.calledOut += of.leftOut.calledOut;
      }
    }
  }
  return (["level", "netCord", "calledOut"] as const)
    .filter((why) => points[why] > 0)
    .map((why) => ({ why, points: points[why] }));
};

const partsOf = (matches: readonly PickedMatch[], name: FigureName): HistoryFigure["parts"] => {
  const sums = new Map<string, Sum>();
  for (const match of matches) {
    for (const [part, count] of Object.entries(match.figures.parts[name] ?? {})) {
      for (const told of countPicked(match, count).values()) addTo(reach(sums, part, freshSum), told);
    }
  }
  return [...sums].sort(([a], [b]) => (a < b ? -1 : 1)).map(([part, sum]) => ({ part, ...sum }));
};

/** x of n of a figure over several matches, and nothing more. */
export const historyCount = (matches: readonly PickedMatch[], name: FigureName): SummedCount => {
  const all = freshSum();
  for (const match of matches) {
    for (const told of countPicked(match, match.figures[name]).values()) addTo(all, told);
  }
  return all;
};

/**
 * A figure over the points that count of several matches: the sum of what each match says, and never of a level that
 * may not feed it. SPEC HF1, HF2.
 */
export const historyFigure = (matches: readonly PickedMatch[], name: FigureName): HistoryFigure => {
  const sums = new Map<ChartingLevel, Sum>();
  let counted = 0;
  for (const match of matches) {
    const told = countPicked(match, match.figures[name]);
    if (told.size > 0) counted += 1;
    for (const [level, sum] of told) addTo(reach(sums, level, freshSum), sum);
  }
  const all = freshSum();
  for (const sum of sums.values()) addTo(all, sum);
  return {
    ...all,
    matches: counted,
    levels: CHARTING_LEVELS.flatMap((level) => {
      const sum = sums.get(level);
      return sum ? { level, ...sum } : [];
    }),
    leftOut: leftOutOf(matches, name),
    parts: FIGURES[name].unit === "moments" ? [] : partsOf(matches, name),
  };
};
