import { noInput } from "../fields.ts";
import { openProcedure } from "../procedure.ts";

/** What stands here: an academy, a complete demonstration, and how far the loading of one is. */
export const status = openProcedure.input(noInput).query(async ({ ctx }) => {
  const demoAcademyId = await ctx.store.demoAcademyId();
  // The demonstration's first day is made last: one without a day was cut short and is loaded on.
  const demoDays = demoAcademyId === undefined ? [] : await ctx.store.listDays({ academyId: demoAcademyId });
  return {
    hasAcademy: await ctx.store.hasAcademy(),
    hasDemo: demoDays.length > 0,
    demo: ctx.demo.state(),
  };
});
