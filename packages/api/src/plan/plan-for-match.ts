import type { ByPlayer } from "@courtloom/core";
import { holdsFigures } from "@courtloom/protocol";
import { z } from "zod";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { holdingOf } from "../match/holding-of.ts";
import { matchCardOf } from "../match/match-card-of.ts";
import { staffProcedure } from "../procedure.ts";
import { type MatchPlan, matchPlans } from "./match-plans.ts";

/** The plans of a match's own players, for the court's page; null for a visitor and where there was no plan. Rule AP65. */
export const planForMatch = staffProcedure
  .input(z.strictObject({ matchId: idField }))
  .query(async ({ ctx, input: { matchId } }): Promise<ByPlayer<MatchPlan | null>> => {
    const card = await matchCardOf(ctx, matchId);
    if (!holdsFigures(holdingOf(ctx, "courtPage", card))) throw failure("forbidden");
    return matchPlans(ctx, card);
  });
