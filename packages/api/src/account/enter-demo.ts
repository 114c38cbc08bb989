import { failure } from "../errors/failure.ts";
import { emptyInput } from "../fields.ts";
import { openProcedure } from "../procedure.ts";

/** Signs this device in as the demonstration's director, whose academy is invented and open to everybody. */
export const enterDemo = openProcedure.input(emptyInput).mutation(async ({ ctx }) => {
  const entered = await ctx.auth.enterDemo(ctx.cookieHeader);
  if (!entered.ok) throw failure(entered.error);
  ctx.setCookie(entered.value.setCookie);
  return { entered: true };
});
