import { z } from "zod";
import { audit } from "../audit.ts";
import { failure } from "../errors/failure.ts";
import { coachingModeField, idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

/** Says whether coaching is allowed in a match; what it says holds at once, also while it is played. Rule AP8. */
export const setCoachingMode = staffProcedure
  .input(z.strictObject({ matchId: idField, coachingMode: coachingModeField }))
  .mutation(async ({ ctx, input: { matchId, coachingMode } }) => {
    const { academyId } = ctx.staff;
    const changed = await ctx.store.changeMatch({ academyId, matchId, change: { coachingMode } });
    if (!changed.ok) throw failure(changed.error.code);
    await audit(ctx, "match.setCoachingMode", matchId);
    return { coachingMode };
  });
