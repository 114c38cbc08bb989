import type { ByChoice, WonOf } from "@courtloom/stats";
import { isKept } from "../balls/strokes.ts";
import type { Tally } from "../tally/tally.ts";
import { tallyCells } from "../tally/tally-count.ts";
import { CHOICE_SITUATIONS, choiceSituationAt } from "./choice-situation.ts";

/**
 * Balls of points won and lost by situation and choice, the kept ball first and the line second, of what was charted
 * at every ball: a tally of any number of matches. SPEC HF11.
 */
export const wonByChoice = (tally: Tally): readonly ByChoice<WonOf>[] => {
  const sums = CHOICE_SITUATIONS.map(() => [
    { won: 0, n: 0 },
    { won: 0, n: 0 },
  ]);
  for (const { of, cell } of tallyCells(tally, "every")) {
    const place = choiceSituationAt(of.depth, of.side, of.landing);
    const isLine = of.choice === "line";
    const sum = place === undefined || !(isLine || isKept(of)) ? undefined : sums[place]?.[isLine ? 1 : 0];
    const [, , won, lost] = cell;
    if (!sum) continue;
    sum.won += won;
    sum.n += won + lost;
  }
  return sums.map(([kept = { won: 0, n: 0 }, line = { won: 0, n: 0 }]) => [kept, line]);
};
