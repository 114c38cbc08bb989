import { and, eq } from "drizzle-orm";
import type { Tx } from "../in-academy.ts";
import { player } from "../schema/player.ts";

/** Whether this is a player of the academy's own; false for one who is not on its list. */
export async function isOwnPlayer({ orm }: Tx, academyId: string, playerId: string): Promise<boolean> {
  const [found] = await orm
    .select()
    .from(player)
    .where(and(eq(player.academyId, academyId), eq(player.playerId, playerId)));
  return found?.own ?? false;
}
