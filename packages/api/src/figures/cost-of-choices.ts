import { costOfChoices, serveBefore } from "@courtloom/decisions";
import { z } from "zod";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import type { ChoiceCost } from "./choice-cost.ts";
import { historyFilterField } from "./history-filter.ts";
import { pickedChoices } from "./picked-choices.ts";
import { readFit } from "./read-fit.ts";
import { pickedOf, readHistory } from "./read-history.ts";

/** What a player's choices off the plan went with, in points and, for coaches alone, in match chances. Rule HF16. */
export const choiceCost = staffProcedure
  .input(z.strictObject({ playerId: idField, filter: historyFilterField }))
  .query(async ({ ctx, input: { playerId, filter } }): Promise<ChoiceCost> => {
    const [history, { fit, row }] = await Promise.all([readHistory(ctx, playerId, filter), readFit(ctx)]);
    const serve = serveBefore(fit);
    const { balls, matches } = pickedChoices(pickedOf(history.matches, filter), serve);
    return {
      player: { playerId, displayName: history.player.displayName },
      fit: row,
      matches,
      serve,
      ...costOfChoices(fit, balls),
    };
  });
