import { z } from "zod";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

/** A day's codes that may be used, to be read out, and the phones that are in with one. */
export const listCodes = staffProcedure
  .input(z.strictObject({ dayId: idField }))
  .query(async ({ ctx, input: { dayId } }) => {
    const { academyId } = ctx.staff;
    if ((await ctx.store.dayBoard({ academyId, dayId })) === undefined) throw failure("unknown_day");
    const [codes, phones] = await Promise.all([
      ctx.auth.activeCodes(academyId, dayId),
      ctx.auth.activeCourtside(academyId, dayId),
    ]);
    return {
      codes: codes.map(({ codeId, kind, courtId, code, expiresMs }) => ({
        codeId,
        kind,
        courtId,
        /** Null when it can no longer be read: issue another. */
        code: code ?? null,
        expiresMs,
      })),
      phones: phones.map(({ sessionId, kind, courtId, name, openedMs }) => ({
        sessionId,
        kind,
        courtId,
        name,
        openedMs,
      })),
    };
  });
