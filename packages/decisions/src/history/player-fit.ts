import { academyLogits, type ChoiceFit, fitChoices } from "@courtloom/stats";
import type { AcademyFit } from "./academy-fit.ts";
import type { ChoiceBall } from "./choice-balls.ts";
import { CHOICE_SITUATIONS } from "./choice-situation.ts";
import { wonByChoice } from "./won-by-choice.ts";

export interface PlayerFit {
  readonly fit: ChoiceFit;
  /** Mean balls per point by situation: several of one point share its outcome. */
  readonly choicesPerPoint: readonly number[];
}

const countsOf = (balls: readonly ChoiceBall[]) => {
  const sides = CHOICE_SITUATIONS.map(() => ({
    kept: { won: 0, n: 0 },
    line: { won: 0, n: 0 },
    points: new Set<string>(),
  }));
  for (const { situation, isLine, won, pointId } of balls) {
    const at = sides[situation];
    if (won === undefined || !at) continue;
    const sum = isLine ? at.line : at.kept;
    sum.n += 1;
    if (won) sum.won += 1;
    at.points.add(pointId);
  }
  return sides;
};

/** A player's choices fitted beside the academy's; points whose outcome does not count are left out. SPEC HF13. */
export const fitPlayer = (academy: AcademyFit, balls: readonly ChoiceBall[]): PlayerFit => {
  const counts = countsOf(balls);
  const data = {
    academyLogits: academyLogits(wonByChoice(academy.academy)),
    counts: counts.map(({ kept, line }) => [kept, line] as const),
  };
  return {
    fit: fitChoices(data, academy.spread),
    choicesPerPoint: counts.map(({ kept, line, points }) =>
      points.size > 0 ? (kept.n + line.n) / points.size : 1,
    ),
  };
};
