import { err, ok, type Result } from "@courtloom/core";
import { DESK_LANE } from "@courtloom/match-log";
import type { LaneChartist, MatchRef } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { findMatch } from "./head-row.ts";

/** Rule ES18. */
export async function readLanes(
  db: Db,
  { academyId, matchId }: MatchRef,
): Promise<Result<readonly LaneChartist[], { readonly code: "unknown_match" }>> {
  return inAcademy(db, academyId, async ({ sql }) => {
    const [lanes, found] = await Promise.all([
      sql<LaneChartist[]>`
        select lane_id as "laneId", chartist from lane
        where academy_id = ${academyId} and match_id = ${matchId} and lane_id <> ${DESK_LANE}
        order by created_at, epoch`.execute(),
      findMatch(sql, { academyId, matchId }),
    ]);
    return found.length > 0 ? ok([...lanes]) : err({ code: "unknown_match" });
  });
}
