import { z } from "zod";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import { toDeskMatch } from "./desk-match.ts";

/** One match with its names, for pages about it. */
export const getMatch = staffProcedure
  .input(z.strictObject({ matchId: idField }))
  .query(async ({ ctx, input: { matchId } }) => {
    const match = await ctx.store.matchCard({ academyId: ctx.staff.academyId, matchId });
    if (match === undefined) throw failure("unknown_match");
    return toDeskMatch(match);
  });
