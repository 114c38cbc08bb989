import { err, ok, type Result } from "@courtloom/core";
import type { ChartingLevel } from "@courtloom/match-log";
import type { ChangedHeads, MatchHead, MatchRef } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";

/** A change is seen by others only when it is committed: what is asked for overlaps by this much. */
const OVERLAP_S = 10;

interface Row {
  readonly academy_id: string;
  readonly match_id: string;
  readonly day_id: string | null;
  readonly court_id: string | null;
  readonly pos: number;
  readonly epoch: number;
  readonly lead_lane: string | null;
  readonly chartist: string | null;
  readonly level: ChartingLevel | null;
  readonly sealed: boolean;
  readonly heard_at: string | null;
  readonly unsent: number | null;
}

const toHead = (row: Row): MatchHead => ({
  academyId: row.academy_id,
  matchId: row.match_id,
  dayId: row.day_id,
  courtId: row.court_id,
  pos: row.pos,
  epoch: row.epoch,
  leadLaneId: row.lead_lane,
  chartist: row.chartist,
  level: row.level,
  sealed: row.sealed,
  heardMs: row.heard_at === null ? null : Date.parse(row.heard_at),
  unsent: row.unsent,
});

/** Rule ES13. Goes through the head reader's function: it comes before any tenant is known. */
export async function readChangedHeads(db: Db, since: string | undefined): Promise<ChangedHeads> {
  const [clock] = await db.sql<{ next: string }[]>`
    select (clock_timestamp() - make_interval(secs => ${OVERLAP_S}))::text as next`;
  const rows = await db.sql<Row[]>`select * from read_heads(${since ?? null}::timestamptz)`;
  return { heads: rows.map(toHead), next: clock?.next ?? "" };
}

export async function readHead(
  db: Db,
  { academyId, matchId }: MatchRef,
): Promise<Result<MatchHead, { readonly code: "unknown_match" }>> {
  return inAcademy(db, academyId, async ({ sql }) => {
    const [row] = await sql<Row[]>`
      select m.academy_id, m.match_id, m.day_id, m.court_id, coalesce(h.pos, 0) as pos,
             coalesce(h.epoch, 0) as epoch, h.lead_lane, l.chartist, l.level,
             coalesce(h.sealed, false) as sealed, b.heard_at, b.unsent
      from match m
      left join match_head h on h.academy_id = m.academy_id and h.match_id = m.match_id
      left join lane l on l.academy_id = h.academy_id and l.match_id = h.match_id and l.lane_id = h.lead_lane
      left join heard b on b.academy_id = m.academy_id and b.match_id = m.match_id
      where m.academy_id = ${academyId} and m.match_id = ${matchId}`;
    return row ? ok(toHead(row)) : err({ code: "unknown_match" });
  });
}
