import { DESK_LANE, type LoggedEntry } from "@courtloom/match-log";
import postgres from "postgres";
import type { Append, Appended } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import type { HashedItem } from "./hash-item.ts";
import { type EntryItem, entryColumns } from "./insert-entries.ts";

/** Ends the transaction without a trace: the batch is not simply the next one of its lane. */
class NotNext extends Error {}

/**
 * The usual case in one statement: every item is an entry and the first one follows the lane's cursor.
 * The head's row is locked and moved first, then the lane's, so the order of locks is the same everywhere;
 * after a wait both are read as they are then. Undefined, and nothing written, when it is another case.
 */
export async function appendNext(
  db: Db,
  batch: Append,
  items: readonly HashedItem[],
): Promise<Appended | undefined> {
  const entries = items.filter((item) => "entry" in item);
  const first = entries[0]?.n ?? 0;
  const isRun = entries.every(({ n }, i) => n === first + i);
  if (entries.length === 0 || entries.length < items.length || !isRun || batch.laneId === DESK_LANE)
    return undefined;
  try {
    return await inAcademy(db, batch.academyId, async ({ sql }) => {
      const rows = await insertNext(sql, batch, entries);
      if (rows.length !== entries.length) throw new NotNext();
      return toAppended(batch, entries, rows);
    });
  } catch (error) {
    const idTaken = error instanceof postgres.PostgresError && error.code === "23505";
    if (error instanceof NotNext || idTaken) return undefined;
    throw error;
  }
}

interface Placed {
  readonly pos: number;
  readonly n: number;
  readonly epoch: number;
}

function insertNext(
  sql: postgres.TransactionSql,
  { academyId, matchId, laneId }: Append,
  entries: readonly EntryItem[],
): Promise<readonly Placed[]> {
  const first = entries[0]?.n ?? 0;
  const count = entries.length;
  const { ids, hashes, texts } = entryColumns(entries);
  return sql<Placed[]>`
    with grown as (
      update match_head set pos = pos + ${count}, changed_at = clock_timestamp()
      where academy_id = ${academyId} and match_id = ${matchId}
      returning pos - ${count} as before
    ), moved as (
      update lane set cursor = ${first + count - 1} from grown
      where academy_id = ${academyId} and match_id = ${matchId} and lane_id = ${laneId} and cursor = ${first - 1}
      returning lane.epoch, grown.before
    )
    insert into entry (academy_id, match_id, lane_id, epoch, pos, n, entry_id, hash, entry)
    select ${academyId}, ${matchId}, ${laneId}, moved.epoch, moved.before + new.i, ${first - 1} + new.i,
           new.id, decode(new.hash, 'hex'), new.entry::json
    from moved, unnest(${ids}::text[], ${hashes}::text[], ${texts}::text[])
      with ordinality as new (id, hash, entry, i)
    returning pos, n, epoch`.execute();
}

function toAppended({ laneId }: Append, entries: readonly EntryItem[], rows: readonly Placed[]): Appended {
  const placed = new Map(rows.map((row) => [row.n, row]));
  const logged: LoggedEntry[] = entries.flatMap(({ n, entry }) => {
    const row = placed.get(n);
    return row ? [{ pos: row.pos, laneId, epoch: row.epoch, entry }] : [];
  });
  const last = logged.at(-1);
  return { kind: "appended", upTo: last?.entry.n ?? 0, head: last?.pos ?? 0, logged };
}
