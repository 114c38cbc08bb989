import { z } from "zod";
import { audit } from "../audit.ts";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import { watchChoiceField } from "./watch-fields.ts";

const RELOAD = "Reload the page.";

const input = z
  .strictObject({
    playerId: idField.nullable(),
    expected: z.int(RELOAD).min(0, RELOAD).max(1_000_000, RELOAD),
    choice: watchChoiceField.nullable(),
  })
  .transform(({ playerId, choice, expected }, context) => {
    if (playerId !== null) return { playerId, choice, expected };
    if (choice !== null) return { playerId, choice, expected };
    context.addIssue({ code: "custom", path: ["choice"], message: "Choose what is watched." });
    return z.NEVER;
  });

/**
 * Saves what is watched: of everybody, or with `playerId` of one player, where null goes back to the academy's. Where
 * somebody saved meanwhile nothing is written. Rules WA18, WA22.
 */
export const saveWatch = staffProcedure.input(input).mutation(async ({ ctx, input: setting }) => {
  const { academyId, memberId } = ctx.staff;
  const saved = await ctx.store.saveWatchSetting({ ...setting, academyId, savedBy: memberId });
  if (!saved.ok) throw failure(saved.error.code);
  await audit(ctx, "watch.save", setting.playerId ?? academyId);
  return saved.value;
});
