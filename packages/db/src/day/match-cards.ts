import { and, asc, eq, type SQL } from "drizzle-orm";
import { type AnyPgColumn, alias } from "drizzle-orm/pg-core";
import type { MatchCard, MatchStage, Player } from "../day-store.ts";
import { inAcademy, type Tx } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { court } from "../schema/day.ts";
import { match } from "../schema/match.ts";
import { player } from "../schema/player.ts";

const playerA = alias(player, "player_of_a");
const playerB = alias(player, "player_of_b");
const partnerA = alias(player, "partner_of_a");
const partnerB = alias(player, "partner_of_b");

type PlayerRow = typeof player.$inferSelect;

export const toPlayer = (row: PlayerRow): Player => ({
  playerId: row.playerId,
  displayName: row.displayName,
  hand: row.hand,
  birthYear: row.birthYear,
  squad: row.squad,
  own: row.own,
  level: row.level,
});

interface CardRow {
  readonly match: typeof match.$inferSelect;
  readonly courtNo: number | null;
  readonly playerA: PlayerRow;
  readonly playerB: PlayerRow;
  readonly partnerA: PlayerRow | null;
  readonly partnerB: PlayerRow | null;
}

/** Rule DB10. */
const stageOf = ({ openedAt, overAt, sealedAt }: CardRow["match"]): MatchStage => {
  if (sealedAt) return "sealed";
  if (overAt) return "over";
  return openedAt ? "open" : "waiting";
};

const toCard = ({ match: row, courtNo, ...people }: CardRow): MatchCard => ({
  academyId: row.academyId,
  matchId: row.matchId,
  dayId: row.dayId,
  courtId: row.courtId,
  courtNo,
  orderNo: row.orderNo,
  title: row.title,
  playedOn: row.playedOn,
  players: { A: toPlayer(people.playerA), B: toPlayer(people.playerB) },
  partners: {
    A: people.partnerA && toPlayer(people.partnerA),
    B: people.partnerB && toPlayer(people.partnerB),
  },
  format: row.matchFormat,
  firstServer: row.firstServer,
  doubles: row.doubles,
  coachingMode: row.coachingMode,
  subjects: row.subjects,
  stage: stageOf(row),
  createdMs: row.createdAt.getTime(),
  openedMs: row.openedAt?.getTime() ?? null,
  sealedMs: row.sealedAt?.getTime() ?? null,
});

const joinPlayer = (
  people: { readonly academyId: AnyPgColumn; readonly playerId: AnyPgColumn },
  id: AnyPgColumn,
) => and(eq(people.academyId, match.academyId), eq(people.playerId, id));

/** Cards of the matches that `where` picks, by court and order of play; those without a court last. */
export async function selectCards({ orm }: Tx, where: SQL | undefined): Promise<readonly MatchCard[]> {
  const rows = await orm
    .select({ match, courtNo: court.no, playerA, playerB, partnerA, partnerB })
    .from(match)
    .innerJoin(playerA, joinPlayer(playerA, match.playerA))
    .innerJoin(playerB, joinPlayer(playerB, match.playerB))
    .leftJoin(partnerA, joinPlayer(partnerA, match.partnerA))
    .leftJoin(partnerB, joinPlayer(partnerB, match.partnerB))
    .leftJoin(court, and(eq(court.academyId, match.academyId), eq(court.courtId, match.courtId)))
    .where(where)
    .orderBy(asc(court.no), asc(match.orderNo), asc(match.createdAt), asc(match.matchId));
  return rows.map(toCard);
}

export const readMatchCard = (
  db: Db,
  { academyId, matchId }: { readonly academyId: string; readonly matchId: string },
): Promise<MatchCard | undefined> =>
  inAcademy(db, academyId, async (tx) => {
    const [card] = await selectCards(tx, and(eq(match.academyId, academyId), eq(match.matchId, matchId)));
    return card;
  });

export const readDayMatches = (
  db: Db,
  { academyId, dayId }: { readonly academyId: string; readonly dayId: string },
): Promise<readonly MatchCard[]> =>
  inAcademy(db, academyId, (tx) =>
    selectCards(tx, and(eq(match.academyId, academyId), eq(match.dayId, dayId))),
  );
