import { byPlayer } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import { countMatch } from "./count-match.ts";
import type { CellCounting, Counting, FigureCounting, PlayerCounting } from "./counting.ts";
import type { CellFigure, Count, MatchFigures, PlayerFigures } from "./figures.ts";
import { FIGURE_NAMES, type FigureName } from "./registry.ts";

const toCount = ({ hits, others }: Counting): Count => ({
  x: hits.length,
  n: hits.length + others.length,
  hits,
  others,
});

const partsOf = (parts: FigureCounting["parts"]): Readonly<Record<string, Count>> => {
  const counts: Record<string, Count> = {};
  for (const [part, counting] of parts) counts[part] = toCount(counting);
  return counts;
};

const toCell = ({ lastPoint: _, ...cell }: CellCounting): CellFigure => cell;

const toFigures = ({ figures, cells, targets }: PlayerCounting): PlayerFigures => {
  const counts: Partial<Record<FigureName, Count>> = {};
  const parts: Partial<Record<FigureName, Readonly<Record<string, Count>>>> = {};
  for (const [place, name] of FIGURE_NAMES.entries()) {
    const figure = figures[place];
    if (!figure) continue;
    counts[name] = toCount(figure.all);
    if (figure.parts.size > 0) parts[name] = partsOf(figure.parts);
  }
  return {
    ...(counts as Record<FigureName, Count>),
    parts,
    cells: Array.from(cells.values(), toCell),
    targets: targets.map(({ ruleId, target, count }) => ({ ruleId, target, count: toCount(count) })),
  };
};

/**
 * The figures of a match: a pure function of its view, so corrections need no care here. Sides that are
 * not charted, and players of other academies, have none. SPEC D1 to D6.
 */
export const figuresOf = (view: MatchView): MatchFigures => {
  const counting = countMatch(view);
  return byPlayer((side) => {
    const mine = counting[side];
    return mine && toFigures(mine);
  });
};
