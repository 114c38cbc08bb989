import { audit } from "../audit.ts";
import { failure } from "../errors/failure.ts";
import { emptyInput } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import { STARTER_CONTENT } from "./starter-content.ts";

/** Makes the academy's first plan from the example; refused where there is a plan. Rule AP66. */
export const startFromStarter = staffProcedure.input(emptyInput).mutation(async ({ ctx }) => {
  const saved = await ctx.store.savePlan({
    academyId: ctx.staff.academyId,
    playerId: null,
    expected: 0,
    content: STARTER_CONTENT,
    note: "From the starter plan",
    savedBy: ctx.staff.memberId,
  });
  if (!saved.ok) throw failure(saved.error.code === "stale_plan" ? "has_plan" : saved.error.code);
  await audit(ctx, "plan.startFromStarter", saved.value.planId);
  return { version: saved.value.version };
});
