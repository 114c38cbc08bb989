import { z } from "zod";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import type { PlanVersionRow } from "./plan-store.ts";

/** A plan as its editor needs it. */
export interface PlanFile {
  /** Null: the academy's own plan. */
  readonly player: { readonly playerId: string; readonly displayName: string } | null;
  /** The academy's plan as it stands; null while there is none. */
  readonly academy: PlanVersionRow | null;
  /** All versions of the plan that was asked for, the newest first; none while there is none. */
  readonly versions: readonly PlanVersionRow[];
}

/** The academy's plan, or with `playerId` that of an own player, with its history. Rule AP64. */
export const getPlan = staffProcedure
  .input(z.strictObject({ playerId: idField.nullable() }))
  .query(async ({ ctx, input: { playerId } }): Promise<PlanFile> => {
    const { academyId } = ctx.staff;
    const [players, versions, heads] = await Promise.all([
      ctx.store.listPlayers({ academyId, ownOnly: true }),
      ctx.store.planVersions({ academyId, playerId }),
      ctx.store.plans({ academyId, playerIds: [] }),
    ]);
    const player = players.find((each) => each.playerId === playerId);
    if (playerId !== null && player === undefined) throw failure("unknown_player");
    return {
      player: player ? { playerId: player.playerId, displayName: player.displayName } : null,
      academy: heads[0] ?? null,
      versions,
    };
  });
