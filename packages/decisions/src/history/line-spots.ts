import type { FrozenPlan } from "@courtloom/match-log";
import { type Estimate, pointsLost } from "@courtloom/stats";
import { DEPTHS_STRUCK, type DepthStruck } from "@courtloom/tennis";
import type { AcademyFit } from "./academy-fit.ts";
import type { ChoiceBall } from "./choice-balls.ts";
import { CHOICE_SITUATIONS, type ChoiceSituation } from "./choice-situation.ts";
import type { EstimateRow, LineCell, LineSpot, LineVerdict, WonRow } from "./line-spot.ts";
import { planAimAt } from "./plan-aim.ts";
import { fitPlayer, type PlayerFit } from "./player-fit.ts";

/** Below so many of either choice nothing is said of which pays. */
const ENOUGH = 5;

export const toEstimateRow = ({ value, low, high, distinguishable }: Estimate): EstimateRow => ({
  value,
  low,
  high,
  distinguishable,
});

const wonOf = (balls: readonly ChoiceBall[]): WonRow => {
  const counted = balls.filter(({ won }) => won !== undefined);
  return { x: counted.filter(({ won }) => won).length, n: counted.length };
};

/** Line less kept over some situations, each by its share of the player's balls there. */
const worthOf = ({ fit, choicesPerPoint }: PlayerFit, balls: readonly ChoiceBall[]): EstimateRow | null => {
  const counted = balls.filter(({ won }) => won !== undefined);
  if (counted.length === 0) return null;
  const weights = CHOICE_SITUATIONS.map(() => 0);
  for (const { situation } of counted) weights[situation] = (weights[situation] ?? 0) + 1 / counted.length;
  const ofLine = weights.map((count) => ({ planned: 1 as const, count }));
  return toEstimateRow(pointsLost(fit, ofLine, choicesPerPoint));
};

const verdictOf = (worth: EstimateRow | null, line: WonRow, kept: WonRow): LineVerdict => {
  if (!worth?.distinguishable || Math.min(line.n, kept.n) < ENOUGH) return "cantTell";
  return worth.value > 0 ? "pays" : "costs";
};

const cellOf = (fit: PlayerFit | undefined, balls: readonly ChoiceBall[]): LineCell => {
  const line = wonOf(balls.filter(({ isLine }) => isLine));
  const kept = wonOf(balls.filter(({ isLine }) => !isLine));
  const worth = fit ? worthOf(fit, balls) : null;
  return {
    verdict: verdictOf(worth, line, kept),
    worth,
    line,
    kept,
    cross: wonOf(balls.filter(({ choice }) => choice === "cross")),
    middle: wonOf(balls.filter(({ choice }) => choice === "middle")),
  };
};

const contradiction = (plan: LineSpot["plan"], verdict: LineVerdict): LineSpot["contradicts"] => {
  if (plan === "keep" && verdict === "pays") return "keepButLinePays";
  return plan === "straight" && verdict === "costs" ? "lineButKeptPays" : null;
};

const offPlanOf = (balls: readonly ChoiceBall[]): WonRow => {
  const judged = balls.filter(({ isLine, offPlan }) => isLine && offPlan !== undefined);
  return { x: judged.filter(({ offPlan }) => offPlan).length, n: judged.length };
};

const PLACES: readonly Pick<ChoiceSituation, "depth" | "side">[] = DEPTHS_STRUCK.flatMap(
  (depth: DepthStruck) => [
    { depth, side: "left" as const },
    { depth, side: "right" as const },
  ],
);

/**
 * Where the line pays, by the place a ball was struck from and there by what was answered: always six places. Choices
 * go with easier and harder balls, so that nothing here says what causes what. Without a fit no place has a worth.
 * SPEC HF13 to HF15.
 */
export const lineSpots = (
  academy: AcademyFit | undefined,
  balls: readonly ChoiceBall[],
  plan: Pick<FrozenPlan, "rules"> | null,
): readonly LineSpot[] => {
  const fit = academy && fitPlayer(academy, balls);
  const inSituation = (is: (situation: ChoiceSituation) => boolean) => {
    const there = new Set(CHOICE_SITUATIONS.flatMap((situation, place) => (is(situation) ? place : [])));
    return balls.filter(({ situation }) => there.has(situation));
  };
  return PLACES.map(({ depth, side }) => {
    const isHere = (situation: ChoiceSituation) => situation.depth === depth && situation.side === side;
    const here = inSituation(isHere);
    const cell = cellOf(fit, here);
    const aim = planAimAt(plan, { depth, side }) ?? null;
    const landings = CHOICE_SITUATIONS.filter(isHere).map(({ landing }) => ({
      landing: landing ?? null,
      ...cellOf(
        fit,
        inSituation((situation) => isHere(situation) && situation.landing === landing),
      ),
    }));
    return {
      depth,
      side,
      ...cell,
      plan: aim,
      contradicts: contradiction(aim, cell.verdict),
      lineOffPlan: offPlanOf(here),
      landings,
    };
  });
};
