import { randomUUID } from "node:crypto";
import { SIDES } from "@courtloom/core";
import { and, eq, inArray } from "drizzle-orm";
import type { NewMatch } from "../day-store.ts";
import type { Tx } from "../in-academy.ts";
import { court, day } from "../schema/day.ts";
import type { match } from "../schema/match.ts";
import { player } from "../schema/player.ts";

export type MatchRow = typeof match.$inferInsert;

/** What new matches refer to, read in one go. */
export interface MatchContext {
  readonly dateOf: ReadonlyMap<string, string>;
  readonly dayOfCourt: ReadonlyMap<string, string>;
  readonly ownOf: ReadonlyMap<string, boolean>;
}

export const playersOf = ({ playerIds, partnerIds }: NewMatch): readonly string[] => [
  playerIds.A,
  playerIds.B,
  ...(partnerIds ? [partnerIds.A, partnerIds.B] : []),
];

const present = (ids: readonly (string | null)[]): string[] => [...new Set(ids.filter((id) => id !== null))];

export async function readMatchContext(
  { orm }: Tx,
  academyId: string,
  matches: readonly NewMatch[],
): Promise<MatchContext> {
  const dayIds = present(matches.map(({ dayId }) => dayId));
  const courtIds = present(matches.map(({ courtId }) => courtId));
  const playerIds = present(matches.flatMap(playersOf));
  const [days, courts, players] = await Promise.all([
    orm
      .select()
      .from(day)
      .where(and(eq(day.academyId, academyId), inArray(day.dayId, dayIds))),
    orm
      .select()
      .from(court)
      .where(and(eq(court.academyId, academyId), inArray(court.courtId, courtIds))),
    orm
      .select()
      .from(player)
      .where(and(eq(player.academyId, academyId), inArray(player.playerId, playerIds))),
  ]);
  return {
    dateOf: new Map(days.map((row) => [row.dayId, row.date])),
    dayOfCourt: new Map(courts.map((row) => [row.courtId, row.dayId])),
    ownOf: new Map(players.map((row) => [row.playerId, row.own])),
  };
}

/** The row of a match that waits. Defaults: subjects are the own players, the coaching mode is not known. Rule DB9. */
export function matchRow(added: NewMatch, context: MatchContext, orderNo: number): MatchRow | undefined {
  const playedOn = added.dayId === null ? added.playedOn : context.dateOf.get(added.dayId);
  if (playedOn === undefined) return undefined;
  return {
    academyId: added.academyId,
    matchId: added.matchId ?? randomUUID(),
    dayId: added.dayId,
    courtId: added.courtId,
    orderNo: added.orderNo ?? orderNo,
    title: added.title ?? "",
    playedOn,
    playerA: added.playerIds.A,
    playerB: added.playerIds.B,
    partnerA: added.partnerIds?.A ?? null,
    partnerB: added.partnerIds?.B ?? null,
    matchFormat: added.format,
    firstServer: added.firstServer ?? null,
    doubles: added.partnerIds !== undefined,
    coachingMode: added.coachingMode ?? "notKnown",
    surface: added.surface ?? null,
    subjects: [...(added.subjects ?? SIDES.filter((side) => context.ownOf.get(added.playerIds[side])))],
  };
}
