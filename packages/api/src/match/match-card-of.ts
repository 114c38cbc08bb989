import type { MatchRow } from "../api-store.ts";
import { failure } from "../errors/failure.ts";
import type { StaffContext } from "../procedure.ts";

/** The match as the day's tables have it; refused when the academy has no such match. */
export const matchCardOf = async (ctx: StaffContext, matchId: string): Promise<MatchRow> => {
  const card = await ctx.store.matchCard({ academyId: ctx.staff.academyId, matchId });
  if (card === undefined) throw failure("unknown_match");
  return card;
};
