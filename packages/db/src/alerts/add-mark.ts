import type { AlertStore } from "../alert-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";

/** Rule AL14. The alert's row is held meanwhile, so that marks count 1, 2, 3 …. */
export const addMark = (
  db: Db,
  { academyId, key, mark }: Parameters<AlertStore["addMark"]>[0],
): Promise<boolean> =>
  inAcademy(db, academyId, async ({ sql }) => {
    const { matchId, playerId, rate, version, episode } = key;
    const held = await sql`
      select 1 from alert
      where academy_id = ${academyId} and match_id = ${matchId} and player_id = ${playerId}
        and rate = ${rate} and version = ${version} and episode = ${episode}
      for no key update`;
    if (held.length === 0) return false;
    await sql`
      insert into alert_mark (academy_id, match_id, player_id, rate, version, episode, n, kind, by_member, made_at, details)
      select ${academyId}, ${matchId}, ${playerId}, ${rate}, ${version}, ${episode}, coalesce(max(n), 0) + 1,
             ${mark.kind}, ${mark.by}, to_timestamp(${mark.atMs} / 1000.0), ${JSON.stringify(mark.details)}::json
      from alert_mark
      where academy_id = ${academyId} and match_id = ${matchId} and player_id = ${playerId}
        and rate = ${rate} and version = ${version} and episode = ${episode}`;
    return true;
  });
