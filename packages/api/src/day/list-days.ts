import { staffProcedure } from "../procedure.ts";

/** The academy's days, latest first. */
export const listDays = staffProcedure.query(async ({ ctx }) => ({
  days: await ctx.store.listDays({ academyId: ctx.staff.academyId }),
}));
