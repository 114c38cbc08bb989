import type { Rate } from "@courtloom/match-log";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import type { JudgedAlerts } from "../watch-store.ts";

/** Rule WA27. A member's last word on an alert counts, and an alert is useful when at least half of the words say so. */
export const readJudgedAlerts = (
  db: Db,
  { academyId }: { readonly academyId: string },
): Promise<readonly JudgedAlerts[]> =>
  inAcademy(db, academyId, async ({ sql }) => {
    const rows = await sql<{ rate: Rate; x: number; n: number }[]>`
      with words as (
        select distinct on (match_id, player_id, rate, version, episode, by_member)
               match_id, player_id, rate, version, episode, (details ->> 'useful')::boolean as useful
        from alert_mark
        where academy_id = ${academyId} and kind = 'useful'
        order by match_id, player_id, rate, version, episode, by_member, n desc
      ), alerts as (
        select rate, avg(useful::integer) >= 0.5 as useful
        from words
        group by match_id, player_id, rate, version, episode
      )
      select rate, (count(*) filter (where useful))::integer as x, count(*)::integer as n
      from alerts
      group by rate
      order by rate`;
    return rows.map(({ rate, x, n }) => ({ rate, x, n }));
  });
