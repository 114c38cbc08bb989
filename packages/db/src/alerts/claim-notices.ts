import type { AlertKey, NoticeClaim } from "../alert-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { keyText } from "./alert-rows.ts";
import { noticesLeft } from "./notices-left.ts";

/** Rule AL13. Claims of one match for one person come one after another, on whatever node they are made. */
export const claimNotices = (db: Db, claim: NoticeClaim): Promise<readonly AlertKey[]> =>
  inAcademy(db, claim.academyId, async ({ sql }) => {
    const { academyId, matchId, recipient, channel, alerts, atBreak, atMs } = claim;
    await sql`select pg_advisory_xact_lock(hashtextextended(${JSON.stringify([academyId, matchId, recipient])}, 7))`;
    const given = await sql<{ at: number }[]>`
      select at_break as at from alert_notice
      where academy_id = ${academyId} and match_id = ${matchId} and recipient = ${recipient} and channel = ${channel}`;
    const left = noticesLeft(
      given.map(({ at }) => at),
      claim,
    );
    if (left === 0 || alerts.length === 0) return [];
    const rows = await sql<AlertKey[]>`
      insert into alert_notice (academy_id, match_id, player_id, rate, version, episode,
                                transition, recipient, channel, at_break, given_at)
      select a.academy_id, a.match_id, a.player_id, a.rate, a.version, a.episode,
             'raised', ${recipient}, ${channel}, ${atBreak}, to_timestamp(${atMs} / 1000.0)
      from unnest(${alerts.map((a) => a.playerId)}::text[], ${alerts.map((a) => a.rate)}::text[],
                  ${alerts.map((a) => a.version)}::int[], ${alerts.map((a) => a.episode)}::int[])
           with ordinality as asked (player_id, rate, version, episode, rank)
      join alert a on a.academy_id = ${academyId} and a.match_id = ${matchId} and a.player_id = asked.player_id
           and a.rate = asked.rate and a.version = asked.version and a.episode = asked.episode
           and a.state in ('standing', 'easing')
      where not exists (
        select 1 from alert_notice o
        where o.academy_id = a.academy_id and o.match_id = a.match_id and o.player_id = a.player_id
          and o.rate = a.rate and o.version = a.version and o.episode = a.episode
          and o.recipient = ${recipient} and o.channel = ${channel})
      order by asked.rank
      limit ${left}
      on conflict do nothing
      returning match_id as "matchId", player_id as "playerId", rate, version, episode`;
    const claimed = new Set(rows.map(keyText));
    return alerts.filter((key) => claimed.has(keyText(key)));
  });
