import { z } from "zod";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

/** Who charted a match: names by lane, which the log itself does not hold. Empty while it waits. */
export const listLanes = staffProcedure
  .input(z.strictObject({ matchId: idField }))
  .query(async ({ ctx, input: { matchId } }) => {
    const lanes = await ctx.log.lanes({ academyId: ctx.staff.academyId, matchId });
    if (!lanes.ok) throw failure(lanes.error.code);
    return lanes.value;
  });
