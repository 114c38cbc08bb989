import { byPlayer } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import { countMatch } from "./count-match.ts";
import type { CellCounting, Counting, PlayerCounting } from "./counting.ts";
import type { CellFigure, Count, MatchFigures, PlayerFigures } from "./figures.ts";
import { FIGURE_NAMES, type FigureName } from "./registry.ts";

const NONE: Count = { x: 0, n: 0, hits: [], others: [] };

const toCount = (counting: Counting | undefined): Count => {
  if (!counting) return NONE;
  const { hits, others } = counting;
  return { x: hits.length, n: hits.length + others.length, hits, others };
};

const toCell = ({ lastPoint: _, ...cell }: CellCounting): CellFigure => cell;

const toFigures = ({ figures, parts, cells, targets }: PlayerCounting): PlayerFigures => {
  const counts = Object.fromEntries(FIGURE_NAMES.map((name) => [name, toCount(figures.get(name))]));
  return {
    ...(counts as Record<FigureName, Count>),
    parts: Object.fromEntries(
      Array.from(parts, ([name, of]) => [
        name,
        Object.fromEntries(Array.from(of, ([part, counting]) => [part, toCount(counting)])),
      ]),
    ),
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
