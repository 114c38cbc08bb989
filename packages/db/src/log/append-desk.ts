import { assert, err, ok, type Result } from "@courtloom/core";
import { DESK_LANE, ENTRY_VERSION, type Entry, type LoggedEntry } from "@courtloom/match-log";
import type postgres from "postgres";
import type { AppendDesk, Appended } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { hashItem } from "./hash-item.ts";
import { findMatch, lockHead } from "./head-row.ts";
import { insertItems } from "./insert-entries.ts";
import type { DeskMeans } from "./open-match.ts";

interface DeskRow {
  readonly cursor: number;
  /** Wall time of the opening, ms since 1970. */
  readonly openedMs: number;
  readonly known: boolean;
}

/** Rules ES10 and ES11. */
export async function appendDesk(
  db: Db,
  append: AppendDesk,
  means: DeskMeans,
): Promise<Result<Appended, { readonly code: "unknown_match" | "not_open" }>> {
  assert(append.body.kind !== "MatchOpened", "a match is opened by openMatch");
  return inAcademy(db, append.academyId, async ({ sql }) => {
    const [[head], [desk]] = await Promise.all([lockHead(sql, append), findDesk(sql, append)]);
    if (!head || !desk) {
      return err({ code: (await findMatch(sql, append)).length ? "not_open" : "unknown_match" });
    }
    const seals = append.body.kind === "MatchSealed";
    if (desk.known || (seals && head.sealed)) {
      return ok({ kind: "duplicate", upTo: desk.cursor, head: head.pos, logged: [] });
    }
    const logged = await insertDesk(sql, append, desk, head, means);
    if (seals) await markSealed(sql, append);
    return ok({ kind: "appended", upTo: desk.cursor + 1, head: head.pos + 1, logged });
  });
}

/** Writes the desk's next entry; under the match's lock. */
export function insertDesk(
  sql: postgres.TransactionSql,
  append: AppendDesk,
  desk: DeskRow,
  head: { readonly pos: number },
  means: DeskMeans,
): Promise<readonly LoggedEntry[]> {
  const { academyId, matchId } = append;
  const item = hashItem({ n: desk.cursor + 1, entry: deskEntry(append, desk, means) });
  const at = { academyId, matchId, laneId: DESK_LANE, epoch: 0, head: head.pos };
  return insertItems(sql, at, [item]);
}

function deskEntry({ body, entryId }: AppendDesk, desk: DeskRow, { newId, wallMs }: DeskMeans): Entry {
  const now = wallMs();
  return {
    v: ENTRY_VERSION,
    id: entryId ?? newId(),
    n: desk.cursor + 1,
    atMs: Math.max(0, now - desk.openedMs),
    wallMs: now,
    body,
  };
}

/** Where the desk's lane stands; nothing when the match is not open. */
export const findDesk = (
  sql: postgres.TransactionSql,
  { academyId, matchId, entryId }: AppendDesk,
): Promise<readonly DeskRow[]> =>
  sql<DeskRow[]>`
    select l.cursor, (e.entry->>'wallMs')::float8 as "openedMs",
           exists (select from entry k where k.academy_id = ${academyId} and k.match_id = ${matchId}
                   and k.entry_id = ${entryId ?? ""}) as known
    from lane l
    join entry e on e.academy_id = l.academy_id and e.match_id = l.match_id and e.pos = 1
    where l.academy_id = ${academyId} and l.match_id = ${matchId} and l.lane_id = ${DESK_LANE}`.execute();

async function markSealed(sql: postgres.TransactionSql, { academyId, matchId }: AppendDesk): Promise<void> {
  await sql`update match_head set sealed = true where academy_id = ${academyId} and match_id = ${matchId}`;
  await sql`update match set sealed_at = now() where academy_id = ${academyId} and match_id = ${matchId}`;
}
