import { err, ok, type Result } from "@courtloom/core";
import { DESK_LANE } from "@courtloom/match-log";
import type postgres from "postgres";
import type { Append, Appended, AppendRefused } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { appendNext } from "./append-next.ts";
import { type HashedItem, hashItem } from "./hash-item.ts";
import { findMatch, type HeadRow, lockHead } from "./head-row.ts";
import { insertItems } from "./insert-entries.ts";
import { planAppend } from "./plan-append.ts";

interface LaneRow {
  readonly epoch: number;
  readonly cursor: number;
}

interface KnownRow {
  readonly n: number | null;
  readonly hash: string | null;
  /** Set if this row was found because its id is taken. */
  readonly id: string | null;
}

/** One transaction, whichever way it goes. Rules ES4 to ES9. */
export async function append(db: Db, batch: Append): Promise<Result<Appended, AppendRefused>> {
  const items = batch.items.map(hashItem);
  const next = await appendNext(db, batch, items);
  return next ? ok(next) : appendWithCare(db, batch, items);
}

/** Lock, look at the lane, decide, insert, move the cursor, commit. */
async function appendWithCare(
  db: Db,
  batch: Append,
  items: readonly HashedItem[],
): Promise<Result<Appended, AppendRefused>> {
  return inAcademy(db, batch.academyId, async ({ sql }) => {
    const [[head], [lane], known] = await Promise.all([
      lockHead(sql, batch),
      findLane(sql, batch),
      findKnown(sql, batch, items),
    ]);
    if (!head) return err({ code: (await findMatch(sql, batch)).length ? "unknown_lane" : "unknown_match" });
    if (!lane || batch.laneId === DESK_LANE) return err({ code: "unknown_lane" });
    return appendLocked(sql, batch, items, head, lane, known);
  });
}

async function appendLocked(
  sql: postgres.TransactionSql,
  batch: Append,
  items: readonly HashedItem[],
  head: HeadRow,
  lane: LaneRow,
  known: readonly KnownRow[],
): Promise<Result<Appended, AppendRefused>> {
  const hashes = new Map(known.map((row) => [row.n, row.hash]));
  const ids = new Set(known.map((row) => row.id));
  const plan = planAppend(items, {
    cursor: lane.cursor,
    hashOf: (n) => hashes.get(n) ?? undefined,
    hasId: (id) => ids.has(id),
  });
  if (!plan.ok) return plan;
  const upTo = lane.cursor + plan.value.length;
  if (plan.value.length === 0) return ok({ kind: "duplicate", upTo, head: head.pos, logged: [] });
  const { academyId, matchId, laneId } = batch;
  const at = { academyId, matchId, laneId, epoch: lane.epoch, head: head.pos };
  const logged = await insertItems(sql, at, plan.value);
  return ok({ kind: "appended", upTo, head: head.pos + logged.length, logged });
}

const findLane = (
  sql: postgres.TransactionSql,
  { academyId, matchId, laneId }: Append,
): Promise<readonly LaneRow[]> =>
  sql<LaneRow[]>`
    select epoch, cursor from lane
    where academy_id = ${academyId} and match_id = ${matchId} and lane_id = ${laneId}`.execute();

/** Hashes of the batch's numbers in this lane, and its ids that the match already has. */
const findKnown = (
  sql: postgres.TransactionSql,
  { academyId, matchId, laneId }: Append,
  items: readonly HashedItem[],
): Promise<readonly KnownRow[]> => {
  const first = items[0]?.n ?? 1;
  const last = items.at(-1)?.n ?? 0;
  const ids = items.flatMap((item) => ("entry" in item ? [item.entry.id] : []));
  return sql<KnownRow[]>`
    select n, encode(hash, 'hex') as hash, null as id from entry
    where academy_id = ${academyId} and match_id = ${matchId} and lane_id = ${laneId}
      and n between ${first} and ${last}
    union all
    select n, encode(hash, 'hex'), null from rejected_entry
    where academy_id = ${academyId} and match_id = ${matchId} and lane_id = ${laneId}
      and n between ${first} and ${last}
    union all
    select null, null, entry_id from entry
    where academy_id = ${academyId} and match_id = ${matchId} and entry_id = any(${ids}::text[])`.execute();
};
