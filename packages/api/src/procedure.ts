import type { AccountPrincipal } from "@courtloom/core";
import { ACCESS, type Audience, isProcedurePath } from "./access.ts";
import type { ApiContext } from "./context.ts";
import { failure } from "./errors/failure.ts";
import { trpc } from "./trpc.ts";

/** The audience of the procedure that is running; one without a line in the table is nobody's. */
const audienceOf = (path: string): Audience => {
  if (!isProcedurePath(path)) throw failure("forbidden");
  return ACCESS[path];
};

const staffOf = async (ctx: ApiContext, audience: Audience): Promise<AccountPrincipal> => {
  const found = await ctx.principal();
  if (!found.ok) throw failure(found.error);
  if (found.value.kind !== "account") throw failure("forbidden");
  if (audience === "director" && found.value.role !== "director") throw failure("forbidden");
  return found.value;
};

/** A database that is away is no fault of the procedure: the caller hears that trying again helps. */
const guarded = trpc.procedure.use(async ({ ctx, next }) => {
  const result = await next();
  if (!result.ok && ctx.isUnavailable(result.error.cause)) throw failure("unavailable");
  return result;
});

/** For procedures whose audience is "anyone". */
export const openProcedure = guarded.use(({ path, next }) => {
  if (audienceOf(path) !== "anyone") throw failure("forbidden");
  return next();
});

/** For all others: `ctx.staff` is the member who asks, checked against the table before the input is read. */
export const staffProcedure = guarded.use(async ({ ctx, path, next }) => {
  const audience = audienceOf(path);
  if (audience === "anyone") throw failure("forbidden");
  return next({ ctx: { staff: await staffOf(ctx, audience) } });
});

export interface StaffContext extends ApiContext {
  readonly staff: AccountPrincipal;
}
