import type { MatchFormat, Surface } from "@courtloom/tennis";
import type { ChartedMatch, FigureStore, MatchLog } from "../figure-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";

interface Row {
  readonly matchId: string;
  readonly title: string;
  readonly playedOn: string;
  readonly isA: boolean;
  readonly format: MatchFormat;
  readonly surface: Surface | null;
  readonly head: number;
  readonly opponentId: string;
  readonly opponentName: string;
}

const toMatch = ({ isA, opponentId, opponentName, ...row }: Row): ChartedMatch => ({
  ...row,
  side: isA ? "A" : "B",
  opponent: { playerId: opponentId, displayName: opponentName },
});

/** Rule DB70. */
export async function chartedMatches(
  db: Db,
  { academyId, playerId, limit }: Parameters<FigureStore["chartedMatches"]>[0],
): Promise<readonly ChartedMatch[]> {
  return inAcademy(db, academyId, async ({ sql }) => {
    const rows = await sql<Row[]>`
      select m.match_id as "matchId", m.title, to_char(m.played_on, 'YYYY-MM-DD') as "playedOn",
             m.is_a as "isA", m.match_format as format, coalesce(m.surface, d.surface) as surface,
             coalesce(h.pos, 0) as head, o.player_id as "opponentId", o.display_name as "opponentName"
      from (
        select mm.*, ${playerId} in (mm.player_a, coalesce(mm.partner_a, '')) as is_a
        from tally t join match mm on mm.academy_id = t.academy_id and mm.match_id = t.match_id
        where t.academy_id = ${academyId} and t.player_id = ${playerId}
        order by t.played_on desc, t.match_id desc limit ${limit}
      ) m
      join player o on o.academy_id = m.academy_id
        and o.player_id = case when m.is_a then m.player_b else m.player_a end
      left join day d on d.academy_id = m.academy_id and d.day_id = m.day_id
      left join match_head h on h.academy_id = m.academy_id and h.match_id = m.match_id
      order by m.played_on desc, m.match_id desc`;
    return rows.map(toMatch);
  });
}

/** Rule DB71. One statement for all entries, so that a season costs no more round trips than a match. */
export async function matchLogs(
  db: Db,
  { academyId, matchIds }: Parameters<FigureStore["matchLogs"]>[0],
): Promise<readonly MatchLog[]> {
  if (matchIds.length === 0) return [];
  return inAcademy(db, academyId, async ({ sql }) => {
    const ids = [...matchIds];
    const [entries, lanes] = await Promise.all([
      sql<(MatchLog["entries"][number] & { readonly matchId: string })[]>`
        select match_id as "matchId", pos, lane_id as "laneId", epoch, entry from entry
        where academy_id = ${academyId} and match_id = any(${ids}) order by match_id, pos`.execute(),
      sql<(MatchLog["lanes"][number] & { readonly matchId: string })[]>`
        select match_id as "matchId", lane_id as "laneId", chartist from lane
        where academy_id = ${academyId} and match_id = any(${ids}) order by match_id, lane_id`.execute(),
    ]);
    return gather(entries, lanes);
  });
}

type OfMatch<T> = T & { readonly matchId: string };

function gather(
  entries: readonly OfMatch<MatchLog["entries"][number]>[],
  lanes: readonly OfMatch<MatchLog["lanes"][number]>[],
): readonly MatchLog[] {
  const entriesOf = Map.groupBy(entries, ({ matchId }) => matchId);
  const lanesOf = Map.groupBy(lanes, ({ matchId }) => matchId);
  return [...entriesOf].map(([matchId, own]) => ({
    matchId,
    entries: own.map(({ matchId: _, ...logged }) => logged),
    lanes: (lanesOf.get(matchId) ?? []).map(({ laneId, chartist }) => ({ laneId, chartist })),
  }));
}
