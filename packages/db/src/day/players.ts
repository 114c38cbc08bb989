import { randomUUID } from "node:crypto";
import { and, asc, eq } from "drizzle-orm";
import type { NewPlayer, Player } from "../day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { player } from "../schema/player.ts";
import { toPlayer } from "./match-cards.ts";

const toRow = ({ displayName, hand, birthYear, squad, own, level }: NewPlayer) => ({
  displayName,
  hand,
  birthYear,
  squad,
  own,
  level,
});

export async function addPlayer(db: Db, added: NewPlayer): Promise<{ readonly playerId: string }> {
  const { academyId, playerId = randomUUID() } = added;
  await inAcademy(db, academyId, async ({ orm }) => {
    await orm.insert(player).values({ academyId, playerId, ...toRow(added) });
  });
  return { playerId };
}

/** False when there is no such player. */
export async function changePlayer(
  db: Db,
  changed: NewPlayer & { readonly playerId: string },
): Promise<boolean> {
  const { academyId, playerId } = changed;
  return inAcademy(db, academyId, async ({ orm }) => {
    const rows = await orm
      .update(player)
      .set(toRow(changed))
      .where(and(eq(player.academyId, academyId), eq(player.playerId, playerId)))
      .returning({ playerId: player.playerId });
    return rows.length > 0;
  });
}

export async function listPlayers(
  db: Db,
  { academyId, ownOnly = false }: { readonly academyId: string; readonly ownOnly?: boolean },
): Promise<readonly Player[]> {
  return inAcademy(db, academyId, async ({ orm }) => {
    const rows = await orm
      .select()
      .from(player)
      .where(and(eq(player.academyId, academyId), ownOnly ? eq(player.own, true) : undefined))
      .orderBy(asc(player.displayName), asc(player.playerId));
    return rows.map(toPlayer);
  });
}

export async function readPlayer(
  db: Db,
  { academyId, playerId }: { readonly academyId: string; readonly playerId: string },
): Promise<Player | undefined> {
  return inAcademy(db, academyId, async ({ orm }) => {
    const [row] = await orm
      .select()
      .from(player)
      .where(and(eq(player.academyId, academyId), eq(player.playerId, playerId)));
    return row && toPlayer(row);
  });
}
