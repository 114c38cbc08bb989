import { assert, err, ok, type Result } from "@courtloom/core";
import type postgres from "postgres";
import type { LaneIsOpen, LeadLane, OpenLane, OpenLaneRefused } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { findDesk, insertDesk } from "./append-desk.ts";
import { findMatch, type HeadRow, lockHead } from "./head-row.ts";
import type { DeskMeans } from "./open-match.ts";
import { type LanePlan, planLane } from "./plan-lane.ts";

interface LaneRow {
  readonly laneId: string;
  readonly chartist: string;
  readonly kind: LeadLane["owner"]["kind"];
  readonly ownerId: string;
  readonly epoch: number;
  readonly cursor: number;
}

/** Rules ES2, ES3, ES17 and ES30. */
export async function openLane(
  db: Db,
  open: OpenLane,
  means: DeskMeans,
): Promise<Result<LaneIsOpen, OpenLaneRefused>> {
  return inAcademy(db, open.academyId, async ({ sql }) => {
    const [[head], lanes, [meta]] = await Promise.all([
      lockHead(sql, open),
      findLanes(sql, open),
      sql<{ incarnation: string }[]>`select incarnation from log_meta`.execute(),
    ]);
    if (!head) return err({ code: (await findMatch(sql, open)).length ? "not_open" : "unknown_match" });
    const lead = toLead(lanes.find((row) => row.laneId === head.leadLane));
    const found = lanes.find((row) => row.laneId === open.laneId);
    const lane = found && { owner: { kind: found.kind, id: found.ownerId }, epoch: found.epoch };
    const plan = planLane(open, { epoch: head.epoch, sealed: head.sealed, lead, lane });
    if (!plan.ok) return plan;
    await writeLane(sql, open, plan.value, head);
    const pos = await sayTaken(sql, open, plan.value, head, means);
    const { epoch, lead: leads } = plan.value;
    return ok({
      incarnation: meta?.incarnation ?? "",
      epoch,
      cursor: found?.cursor ?? 0,
      head: pos,
      ...(leads ? { lead: leads } : {}),
    });
  });
}

const toLead = (row: LaneRow | undefined): LeadLane | undefined =>
  row && {
    laneId: row.laneId,
    chartist: row.chartist,
    owner: { kind: row.kind, id: row.ownerId },
  };

/** Writes a take-over into the log, so that the fold knows of it before the new lead charts. Answers the last pos. */
async function sayTaken(
  sql: postgres.TransactionSql,
  open: OpenLane,
  plan: LanePlan,
  head: HeadRow,
  means: DeskMeans,
): Promise<number> {
  if (plan.kind !== "start" || !plan.takesOver) return head.pos;
  const body = { kind: "LeadTaken", laneId: open.laneId, epoch: plan.epoch } as const;
  const { academyId, matchId } = open;
  const [desk] = await findDesk(sql, { academyId, matchId, body });
  assert(desk, "an open match has the desk's lane");
  await insertDesk(sql, { academyId, matchId, body }, desk, head, means);
  return head.pos + 1;
}

const findLanes = (
  sql: postgres.TransactionSql,
  { academyId, matchId }: OpenLane,
): Promise<readonly LaneRow[]> =>
  sql<LaneRow[]>`
    select lane_id as "laneId", chartist, owner_kind as kind, owner_id as "ownerId", epoch, cursor
    from lane where academy_id = ${academyId} and match_id = ${matchId}`.execute();

async function writeLane(
  sql: postgres.TransactionSql,
  { academyId, matchId, laneId, chartist, owner, level }: OpenLane,
  plan: LanePlan,
  head: HeadRow,
): Promise<void> {
  if (plan.kind === "resume") {
    await sql`
      update lane set chartist = ${chartist}, owner_id = ${owner.id}, level = ${level}
      where academy_id = ${academyId} and match_id = ${matchId} and lane_id = ${laneId}`;
  } else {
    await sql`
      insert into lane (academy_id, match_id, lane_id, chartist, owner_kind, owner_id, level, epoch)
      values (${academyId}, ${matchId}, ${laneId}, ${chartist}, ${owner.kind}, ${owner.id}, ${level}, ${plan.epoch})`;
  }
  await sql`
    update match_head set
      epoch = ${plan.kind === "start" ? plan.epoch : head.epoch},
      lead_lane = ${plan.kind === "start" ? laneId : head.leadLane},
      changed_at = clock_timestamp()
    where academy_id = ${academyId} and match_id = ${matchId}`;
}
