import type { Heard } from "../entry-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";

/** Rule ES16. One statement per academy, in order of match, so that two nodes never wait for each other in a ring. */
export async function recordHeard(db: Db, heard: readonly Heard[]): Promise<void> {
  for (const [academyId, words] of Map.groupBy(latestOf(heard), (word) => word.academyId)) {
    await inAcademy(db, academyId, async ({ sql }) => {
      await sql`
        insert into heard as old (academy_id, match_id, heard_at, unsent)
        select h.academy_id, h.match_id, to_timestamp(new.heard_ms / 1000.0), new.unsent
        from unnest(${words.map((w) => w.matchId)}::text[], ${words.map((w) => w.heardMs)}::float8[],
                    ${words.map((w) => w.unsent)}::int[]) as new (match_id, heard_ms, unsent)
        join match_head h on h.academy_id = ${academyId} and h.match_id = new.match_id
        order by h.match_id
        on conflict (academy_id, match_id) do update
          set heard_at = excluded.heard_at, unsent = excluded.unsent, changed_at = clock_timestamp()
          where excluded.heard_at > old.heard_at`;
    });
  }
}

/** One word per match: an insert may not meet the same row twice. */
function latestOf(heard: readonly Heard[]): readonly Heard[] {
  const latest = new Map<string, Heard>();
  for (const word of heard) {
    const key = `${word.academyId}\n${word.matchId}`;
    const before = latest.get(key);
    if (!before || word.heardMs > before.heardMs) latest.set(key, word);
  }
  return [...latest.values()];
}
