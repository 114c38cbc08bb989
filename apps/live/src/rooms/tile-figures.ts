import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import { type Count, figuresOf, type PlayerFigures } from "@courtloom/decisions";
import type { MatchView } from "@courtloom/match-log";
import type { TileFigures, TileRate } from "@courtloom/protocol";
import { wilson } from "@courtloom/stats";

const rateOf = ({ x, n }: Count): TileRate => {
  const interval = wilson(x, n);
  return interval ? { x, n, low: interval.low, high: interval.high } : { x, n };
};

const sideOf = (view: MatchView, side: Side, figures: PlayerFigures | undefined): TileFigures | null => {
  if (!figures) return null;
  const usual = view.opened.usualRates?.[side].lineMissed;
  return {
    lineMissed: rateOf(figures.lineMissed),
    lineShare: rateOf(figures.lineShare),
    ...(usual ? { usualLineMissed: usual } : {}),
    ...(figures.planKept.n > 0 ? { planKept: rateOf(figures.planKept) } : {}),
  };
};

/** A match's figures for a staff tile; null for a side that is not charted. */
export const tileFiguresOf = (view: MatchView): ByPlayer<TileFigures | null> => {
  const figures = figuresOf(view);
  return byPlayer((side) => sideOf(view, side, figures[side]));
};
