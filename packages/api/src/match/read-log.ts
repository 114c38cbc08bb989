import { z } from "zod";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

const MOST_ENTRIES = 500;
const HIGHEST_POS = 1_000_000;

const input = z.strictObject({
  matchId: idField,
  after: z.int().min(0).max(HIGHEST_POS),
  limit: z.int().min(1).max(MOST_ENTRIES).default(MOST_ENTRIES),
});

/** A page of a match's log, dense from `after + 1`; empty at the end, or when nothing is charted yet. */
export const readLog = staffProcedure.input(input).query(async ({ ctx, input: wanted }) => {
  const page = await ctx.log.read({ academyId: ctx.staff.academyId, ...wanted });
  if (!page.ok) throw failure(page.error.code);
  return page.value;
});
