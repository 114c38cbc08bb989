import { z } from "zod";
import { staffProcedure } from "../procedure.ts";

/** The academy's list of players by name; `ownOnly` leaves out visitors. */
export const listPlayers = staffProcedure
  .input(z.strictObject({ ownOnly: z.boolean().default(false) }))
  .query(async ({ ctx, input: { ownOnly } }) => ({
    players: await ctx.store.listPlayers({ academyId: ctx.staff.academyId, ownOnly }),
  }));
