import { noInput } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import type { PlanVersionRow } from "./plan-store.ts";

export interface PlanSummary {
  readonly version: number;
  readonly ruleCount: number;
  /** Of a player's plan: rules put in the place of the academy's, and those left out. */
  readonly replacedCount: number;
  readonly leftOutCount: number;
  readonly words: string;
  /** It has a sentence or a question of its own for the change of ends. */
  readonly hasCourtWords: boolean;
  readonly savedMs: number;
  readonly savedByName: string | null;
}

const summaryOf = (row: PlanVersionRow): PlanSummary => ({
  version: row.version,
  ruleCount: row.rules.length,
  replacedCount: row.replaces.length,
  leftOutCount: row.leavesOut.length,
  words: row.words,
  hasCourtWords: row.sentence !== "" || row.question !== "",
  savedMs: row.savedMs,
  savedByName: row.savedByName,
});

/** The academy's plan and its own players by name, each with what their own plan changes of it. */
export const listPlans = staffProcedure.input(noInput).query(async ({ ctx }) => {
  const { academyId } = ctx.staff;
  const [plans, players] = await Promise.all([
    ctx.store.plans({ academyId }),
    ctx.store.listPlayers({ academyId, ownOnly: true }),
  ]);
  const summary = (playerId: string | null): PlanSummary | null => {
    const found = plans.find((plan) => plan.playerId === playerId);
    return found ? summaryOf(found) : null;
  };
  return {
    academy: summary(null),
    players: players.map(({ playerId, displayName, squad }) => ({
      playerId,
      displayName,
      squad,
      plan: summary(playerId),
    })),
  };
});
