import type { LoggedEntry } from "@courtloom/match-log";
import type postgres from "postgres";
import type { MatchRef } from "../entry-store.ts";
import type { HashedItem } from "./hash-item.ts";

export interface LaneAt extends MatchRef {
  readonly laneId: string;
  readonly epoch: number;
  /** Last pos of the match before these items. */
  readonly head: number;
}

/** Gives each readable item its pos, dense from `head + 1`. */
function placeItems(items: readonly HashedItem[], lane: LaneAt): readonly LoggedEntry[] {
  let pos = lane.head;
  return items.flatMap((item) => {
    if (!("entry" in item)) return [];
    pos += 1;
    return [{ pos, laneId: lane.laneId, epoch: lane.epoch, entry: item.entry }];
  });
}

/** Writes new items of a lane, moves its cursor and the match's head; under the match's lock. */
export async function insertItems(
  sql: postgres.TransactionSql,
  lane: LaneAt,
  items: readonly HashedItem[],
): Promise<readonly LoggedEntry[]> {
  const logged = placeItems(items, lane);
  const { academyId, matchId, laneId, epoch } = lane;
  const entries = items.filter((item) => "entry" in item);
  const { ids, hashes, texts } = entryColumns(entries);
  await Promise.all([
    sql`
      with moved as (
        update lane set cursor = ${items.at(-1)?.n ?? 0}
        where academy_id = ${academyId} and match_id = ${matchId} and lane_id = ${laneId}
      ), grown as (
        update match_head set pos = ${lane.head + logged.length}, changed_at = clock_timestamp()
        where academy_id = ${academyId} and match_id = ${matchId}
      )
      insert into entry (academy_id, match_id, lane_id, epoch, pos, n, entry_id, hash, entry)
      select ${academyId}, ${matchId}, ${laneId}, ${epoch}, ${lane.head} + new.i, new.n, new.id,
             decode(new.hash, 'hex'), new.entry::json
      from unnest(${entries.map(({ n }) => n)}::int[], ${ids}::text[], ${hashes}::text[], ${texts}::text[])
        with ordinality as new (n, id, hash, entry, i)`.execute(),
    insertRejected(sql, lane, items),
  ]);
  return logged;
}

export type EntryItem = Extract<HashedItem, { readonly entry: unknown }>;

/** Column by column, as one statement takes them. */
export const entryColumns = (
  entries: readonly EntryItem[],
): { readonly ids: string[]; readonly hashes: string[]; readonly texts: string[] } => ({
  ids: entries.map(({ entry }) => entry.id),
  hashes: entries.map(({ hash }) => hash),
  texts: entries.map(({ entry }) => JSON.stringify(entry)),
});

async function insertRejected(
  sql: postgres.TransactionSql,
  { academyId, matchId, laneId }: LaneAt,
  items: readonly HashedItem[],
): Promise<void> {
  const rejected = items.flatMap((item) => ("rejected" in item ? [item] : []));
  if (rejected.length === 0) return;
  await sql`
    insert into rejected_entry (academy_id, match_id, lane_id, n, code, hash, raw)
    select ${academyId}, ${matchId}, ${laneId}, new.n, new.code, decode(new.hash, 'hex'), new.raw
    from unnest(${rejected.map((r) => r.n)}::int[], ${rejected.map((r) => r.rejected)}::text[],
                ${rejected.map((r) => r.hash)}::text[], ${rejected.map((r) => r.text)}::text[])
      as new (n, code, hash, raw)`;
}
