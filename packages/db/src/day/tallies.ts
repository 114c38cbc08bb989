import { err, ok, type Result } from "@courtloom/core";
import { and, desc, eq, gte, sql } from "drizzle-orm";
import type { HistoryRow, TallyRow } from "../day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { match } from "../schema/match.ts";
import { player } from "../schema/player.ts";
import { tally } from "../schema/tally.ts";

const HISTORY_LIMIT = 500;

const columns = {
  matchId: tally.matchId,
  playerId: tally.playerId,
  playedOn: tally.playedOn,
  version: tally.version,
  tally: tally.tally,
};

/** Rule DB14. */
export async function writeTally(
  db: Db,
  args: { readonly academyId: string } & Omit<TallyRow, "playedOn">,
): Promise<Result<void, { readonly code: "unknown_match" | "unknown_player" }>> {
  const { academyId, matchId, playerId, version } = args;
  return inAcademy(db, academyId, async ({ orm }) => {
    const [found] = await orm
      .select()
      .from(match)
      .where(and(eq(match.academyId, academyId), eq(match.matchId, matchId)));
    if (!found) return err({ code: "unknown_match" });
    const people = [found.playerA, found.playerB, found.partnerA, found.partnerB];
    if (!people.includes(playerId)) return err({ code: "unknown_player" });
    await orm
      .insert(tally)
      .values({ academyId, playerId, matchId, playedOn: found.playedOn, version, tally: args.tally })
      .onConflictDoUpdate({
        target: [tally.academyId, tally.playerId, tally.matchId],
        set: { version, tally: args.tally, playedOn: found.playedOn, writtenAt: sql`now()` },
      });
    return ok(undefined);
  });
}

export async function playerHistory(
  db: Db,
  args: { readonly academyId: string; readonly playerId: string; readonly limit?: number },
): Promise<readonly HistoryRow[]> {
  const { academyId, playerId, limit = HISTORY_LIMIT } = args;
  const isA = sql<boolean>`${playerId} in (${match.playerA}, ${match.partnerA})`;
  return inAcademy(db, academyId, async ({ orm }) => {
    const rows = await orm
      .select({
        ...columns,
        title: match.title,
        isA,
        opponent: { playerId: player.playerId, displayName: player.displayName, level: player.level },
      })
      .from(tally)
      .innerJoin(match, and(eq(match.academyId, tally.academyId), eq(match.matchId, tally.matchId)))
      .innerJoin(
        player,
        and(
          eq(player.academyId, match.academyId),
          eq(player.playerId, sql`case when ${isA} then ${match.playerB} else ${match.playerA} end`),
        ),
      )
      .where(and(eq(tally.academyId, academyId), eq(tally.playerId, playerId)))
      .orderBy(desc(tally.playedOn), desc(tally.matchId))
      .limit(limit);
    return rows.map(({ isA: onSideA, ...row }) => ({ ...row, side: onSideA ? "A" : "B" }));
  });
}

export async function academyTallies(
  db: Db,
  { academyId, since }: { readonly academyId: string; readonly since?: string },
): Promise<readonly TallyRow[]> {
  return inAcademy(db, academyId, ({ orm }) =>
    orm
      .select(columns)
      .from(tally)
      .innerJoin(player, and(eq(player.academyId, tally.academyId), eq(player.playerId, tally.playerId)))
      .where(
        and(
          eq(tally.academyId, academyId),
          eq(player.own, true),
          since === undefined ? undefined : gte(tally.playedOn, since),
        ),
      )
      .orderBy(desc(tally.playedOn), desc(tally.matchId), desc(tally.playerId)),
  );
}
