import { FIGURE_NAMES, type FigureName } from "@courtloom/decisions";

/** A figure, or one part of it, as it is named in an address. */
export interface FigureKey {
  readonly figure: FigureName;
  readonly part?: string;
}

const isFigure = (text: string | undefined): text is FigureName => FIGURE_NAMES.some((name) => name === text);

/** "lineMissed", or "lineMissed.behindBaseline.left" for a part. */
export const writeFigureKey = ({ figure, part }: FigureKey): string =>
  part === undefined ? figure : `${figure}.${part}`;

/** Reads it back; `undefined` for an address that names no figure. SPEC PF8. */
export const readFigureKey = (text: string | null): FigureKey | undefined => {
  const [figure, ...part] = (text ?? "").split(".");
  if (!isFigure(figure)) return undefined;
  return part.length === 0 ? { figure } : { figure, part: part.join(".") };
};
