import { failure } from "../errors/failure.ts";
import { emptyInput } from "../fields.ts";
import { openProcedure } from "../procedure.ts";

/**
 * Begins to load the demonstration academy and answers at once; `setup.status` says how far it is. Only
 * while no real academy stands here: from then on nobody from outside may make this server work.
 */
export const loadDemo = openProcedure.input(emptyInput).mutation(async ({ ctx }) => {
  if (await ctx.store.hasAcademy()) throw failure("already_set_up");
  ctx.demo.start();
  return ctx.demo.state();
});
