import { err, ok, type Result } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";
import type { LogPage, ReadLog } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";

/** Rule ES12. The head is read after the page, so that it is never behind it. */
export async function readLog(
  db: Db,
  { academyId, matchId, after, limit }: ReadLog,
): Promise<Result<LogPage, { readonly code: "unknown_match" }>> {
  return inAcademy(db, academyId, async ({ sql }) => {
    const [entries, [match]] = await Promise.all([
      sql<LoggedEntry[]>`
        select pos, lane_id as "laneId", epoch, entry from entry
        where academy_id = ${academyId} and match_id = ${matchId} and pos > ${after}
        order by pos limit ${limit}`.execute(),
      sql<{ head: number }[]>`
        select coalesce(h.pos, 0) as head from match m left join match_head h using (academy_id, match_id)
        where m.academy_id = ${academyId} and m.match_id = ${matchId}`.execute(),
    ]);
    if (!match) return err({ code: "unknown_match" });
    return ok({ entries: [...entries], head: match.head });
  });
}
