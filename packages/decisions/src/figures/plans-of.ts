import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import { type PlanReading, readPlan } from "../plan/read-plan.ts";

/** Charted from now on, or in a point that shots were charted of: who was charted once keeps what was counted. */
const isCharted = (view: MatchView, side: Side): boolean =>
  view.subjects.includes(side) ||
  view.points.some(({ point, subjects }) => point.level !== "score" && subjects.includes(side));

/** The plan of each side that has figures; `undefined` for a side that is not charted or not of this academy. SPEC D5. */
export const plansOf = (view: MatchView): ByPlayer<PlanReading | undefined> =>
  byPlayer((side) => {
    if (!view.opened.players[side].own || !isCharted(view, side)) return undefined;
    return readPlan(view.opened.plans?.[side] ?? null);
  });
