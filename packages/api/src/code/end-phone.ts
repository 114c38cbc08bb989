import { z } from "zod";
import { audit } from "../audit.ts";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

/** Ends one phone's session; the code it came in with goes on. */
export const endPhone = staffProcedure
  .input(z.strictObject({ sessionId: idField }))
  .mutation(async ({ ctx, input: { sessionId } }) => {
    if (!(await ctx.auth.revokeCourtside(ctx.staff.academyId, sessionId))) throw failure("unknown_phone");
    await audit(ctx, "code.endPhone", sessionId);
    return { sessionId };
  });
