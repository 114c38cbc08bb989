import { lineSpots } from "@courtloom/decisions";
import { z } from "zod";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import { historyFilterField } from "./history-filter.ts";
import type { LineMap } from "./line-map.ts";
import { pickedChoices } from "./picked-choices.ts";
import { readFit } from "./read-fit.ts";
import { pickedOf, readHistory } from "./read-history.ts";
import { readPlanNow } from "./read-plan-now.ts";

/** Where the line pays for a player, beside what the plan of today says there. Rules HF11 to HF15. */
export const lineMap = staffProcedure
  .input(z.strictObject({ playerId: idField, filter: historyFilterField }))
  .query(async ({ ctx, input: { playerId, filter } }): Promise<LineMap> => {
    const [history, { fit, row }, plan] = await Promise.all([
      readHistory(ctx, playerId, filter),
      readFit(ctx),
      readPlanNow(ctx, playerId),
    ]);
    const picked = pickedOf(history.matches, filter);
    const { matches, balls } = pickedChoices(picked);
    return {
      player: { playerId, displayName: history.player.displayName },
      fit: row,
      spots: lineSpots(fit, balls, plan),
      matches,
      matchesLeftOut: picked.length - matches,
    };
  });
