import { holdsFigures, redactEntries } from "@courtloom/protocol";
import { z } from "zod";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import { holdingOf } from "./holding-of.ts";
import { matchCardOf } from "./match-card-of.ts";

const MOST_ENTRIES = 500;
const HIGHEST_POS = 1_000_000;

const input = z.strictObject({
  matchId: idField,
  after: z.int().min(0).max(HIGHEST_POS),
  limit: z.int().min(1).max(MOST_ENTRIES).default(MOST_ENTRIES),
});

/** A page of a match's log for the court's page, dense from `after + 1`; empty at the end, or when nothing is charted yet. */
export const readLog = staffProcedure.input(input).query(async ({ ctx, input: wanted }) => {
  const holding = holdingOf(ctx, "courtPage", await matchCardOf(ctx, wanted.matchId));
  const page = await ctx.log.read({ academyId: ctx.staff.academyId, ...wanted });
  if (!page.ok) throw failure(page.error.code);
  const { entries, ...rest } = page.value;
  return { ...rest, entries: holdsFigures(holding) ? entries : redactEntries(entries) };
});
