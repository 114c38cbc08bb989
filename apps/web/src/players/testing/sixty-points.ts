import { readFileSync } from "node:fs";
import { figuresOf, type PlayerFigures } from "@courtloom/decisions";
import { foldLog, type LoggedEntry } from "@courtloom/match-log";

const FILE = new URL("../../../../../shared/matches/sixty-points.json", import.meta.url);

/** Figures of the sixty points that were tallied by hand. */
export const sixtyPoints = (): PlayerFigures => {
  const { log }: { readonly log: readonly LoggedEntry[] } = JSON.parse(readFileSync(FILE, "utf8"));
  const view = foldLog(log);
  const figures = view.ok ? figuresOf(view.value).A : undefined;
  if (figures === undefined) throw new Error("the sixty points cannot be read");
  return figures;
};
