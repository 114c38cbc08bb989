import { ok, type Result } from "@courtloom/core";
import type { HandedLead, HandOverAsk } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";

/** Rule DB24. */
export async function readHandOver(
  db: Db,
  { academyId, matchId, laneId, to }: HandOverAsk,
): Promise<Result<HandedLead | undefined, never>> {
  return inAcademy(db, academyId, async ({ sql }) => {
    const [row] = await sql<HandedLead[]>`
      select round(extract(epoch from granted_until) * 1000)::float8 as "untilMs" from hand_over
      where academy_id = ${academyId} and match_id = ${matchId} and from_lane = ${laneId}
        and granted_kind = ${to.kind} and granted_id = ${to.id} and withdrawn_at is null
      order by granted_until desc limit 1`;
    return ok(row && { untilMs: row.untilMs });
  });
}
