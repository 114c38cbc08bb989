import { assert, err, ok, type Result } from "@courtloom/core";
import { DESK_LANE, ENTRY_VERSION, type Entry, type LoggedEntry } from "@courtloom/match-log";
import type postgres from "postgres";
import type { MatchIsOpen, MatchRef, OpenMatch, OpenMatchRefused } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { hashItem } from "./hash-item.ts";
import { insertItems } from "./insert-entries.ts";
import { isOpening } from "./is-opening.ts";

export interface DeskMeans {
  readonly newId: () => string;
  readonly wallMs: () => number;
}

/** Rule ES1. */
export async function openMatch(
  db: Db,
  open: OpenMatch,
  desk: DeskMeans,
): Promise<Result<MatchIsOpen, OpenMatchRefused>> {
  assert(open.opened.matchId === open.matchId, "an opening names its own match");
  return inAcademy(db, open.academyId, async ({ sql }) => {
    // The match's own row is the lock: the head does not exist before the opening.
    const [match] = await sql`
      select 1 as found from match
      where academy_id = ${open.academyId} and match_id = ${open.matchId} for update`;
    if (!match) return err({ code: "unknown_match" });
    const before = await findOpening(sql, open);
    if (before) {
      return isOpening(before.opening.entry.body, open.opened) ? ok(before) : err({ code: "already_opened" });
    }
    return ok(await writeOpening(sql, open, desk));
  });
}

async function findOpening(
  sql: postgres.TransactionSql,
  { academyId, matchId }: MatchRef,
): Promise<MatchIsOpen | undefined> {
  const [row] = await sql<{ entry: Entry; pos: number }[]>`
    select e.entry, h.pos from entry e join match_head h using (academy_id, match_id)
    where e.academy_id = ${academyId} and e.match_id = ${matchId} and e.pos = 1`;
  return row && { opening: { pos: 1, laneId: DESK_LANE, epoch: 0, entry: row.entry }, head: row.pos };
}

async function writeOpening(
  sql: postgres.TransactionSql,
  { academyId, matchId, opened }: OpenMatch,
  { newId, wallMs }: DeskMeans,
): Promise<MatchIsOpen> {
  const entry: Entry = { v: ENTRY_VERSION, id: newId(), n: 1, atMs: 0, wallMs: wallMs(), body: opened };
  await sql`insert into match_head (academy_id, match_id, pos) values (${academyId}, ${matchId}, 1)`;
  await sql`
    insert into lane (academy_id, match_id, lane_id, chartist, owner_kind, owner_id, level, epoch)
    values (${academyId}, ${matchId}, ${DESK_LANE}, ${DESK_LANE}, 'desk', ${DESK_LANE}, 'score', 0)`;
  const at = { academyId, matchId, laneId: DESK_LANE, epoch: 0, head: 0 };
  const [opening] = await insertItems(sql, at, [hashItem({ n: 1, entry })]);
  await sql`
    update match set opened_at = now(), first_server = ${opened.firstServer}
    where academy_id = ${academyId} and match_id = ${matchId}`;
  return { opening: opening as LoggedEntry, head: 1 };
}
