import { z } from "zod";
import { audit } from "../audit.ts";
import { dateField, shortText, surfaceField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

const MOST_COURTS = 64;

const input = z.strictObject({
  name: shortText("The day's name", 80),
  date: dateField,
  surface: surfaceField,
  courts: z
    .int("Choose how many courts there are.")
    .min(1, "A day needs at least 1 court.")
    .max(MOST_COURTS, `A day has at most ${MOST_COURTS} courts.`),
});

/** Makes a day with so many courts, called "Court 1", "Court 2" and on. */
export const createDay = staffProcedure
  .input(input)
  .mutation(async ({ ctx, input: { name, date, surface, courts } }) => {
    const { dayId } = await ctx.store.createDay({
      academyId: ctx.staff.academyId,
      name,
      date,
      ...(surface ? { surface } : {}),
      courts: Array.from({ length: courts }, (_, i) => ({ name: `Court ${i + 1}` })),
    });
    await audit(ctx, "day.create", dayId);
    return { dayId };
  });
