import { z } from "zod";
import { audit } from "../audit.ts";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

/** Ends a code and every phone that came in with it. */
export const revokeCode = staffProcedure
  .input(z.strictObject({ codeId: idField }))
  .mutation(async ({ ctx, input: { codeId } }) => {
    if (!(await ctx.auth.revokeCode(ctx.staff.academyId, codeId))) throw failure("unknown_code");
    await audit(ctx, "code.revoke", codeId);
    return { codeId };
  });
