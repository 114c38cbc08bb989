import { z } from "zod";
import { audit } from "../audit.ts";
import { handField, playerNameField, shortText } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";

const input = z.strictObject({
  name: playerNameField,
  hand: handField,
  own: z.boolean("Say whether this is a player of the academy."),
  birthYear: z.int().min(1900).max(2099).nullable().default(null),
  squad: shortText("The squad", 40).nullable().default(null),
  level: z.number().min(0).max(100).nullable().default(null),
});

/** Puts a player on the list. A year of birth, never a date. */
export const addPlayer = staffProcedure
  .input(input)
  .mutation(async ({ ctx, input: { name: displayName, ...file } }) => {
    const { playerId } = await ctx.store.addPlayer({ academyId: ctx.staff.academyId, displayName, ...file });
    await audit(ctx, "player.add", playerId);
    return { playerId };
  });
