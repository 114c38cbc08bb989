import type { FigureRow } from "@courtloom/api";
import type { FigureName } from "@courtloom/decisions";

export type FiguresByName = Readonly<Record<FigureName, FigureRow>>;

/** The rows of a history by the figure's name; a history has a row of every figure. */
export const figuresByName = (rows: readonly FigureRow[]): FiguresByName =>
  Object.fromEntries(rows.map((row) => [row.id, row])) as FiguresByName;
