import { noInput } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

/** The academy's days, latest first. */
export const listDays = staffProcedure.input(noInput).query(async ({ ctx }) => ({
  days: await ctx.store.listDays({ academyId: ctx.staff.academyId }),
}));
