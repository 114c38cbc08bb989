import type postgres from "postgres";
import type { MatchRef } from "../entry-store.ts";

export interface HeadRow {
  readonly pos: number;
  readonly epoch: number;
  readonly sealed: boolean;
  readonly leadLane: string | null;
}

/** Takes the match's lock, so that positions are given one after the other. Nothing when the match is not open. */
export const lockHead = (
  sql: postgres.TransactionSql,
  { academyId, matchId }: MatchRef,
): Promise<readonly HeadRow[]> =>
  sql<HeadRow[]>`
    select pos, epoch, sealed, lead_lane as "leadLane" from match_head
    where academy_id = ${academyId} and match_id = ${matchId} for update`.execute();

/** Whether the match is on the desk's list at all. */
export const findMatch = (
  sql: postgres.TransactionSql,
  { academyId, matchId }: MatchRef,
): Promise<readonly object[]> =>
  sql`select 1 as found from match where academy_id = ${academyId} and match_id = ${matchId}`.execute();
