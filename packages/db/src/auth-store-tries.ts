import type { Db } from "./open-db.ts";

/** Counters are small and soon worthless: each new window clears some that are over. */
const CLEARED_AT_ONCE = 100;

export const createAuthTries = ({ sql }: Db) => {
  const clearOver = (now: string) => sql`
    delete from try_count where key in
      (select key from try_count where reset_at <= ${now} limit ${CLEARED_AT_ONCE} for update skip locked)`;

  return {
    takeTry: async (key: string, windowMs: number, nowMs: number) => {
      const now = new Date(nowMs).toISOString();
      const reset = new Date(nowMs + windowMs).toISOString();
      const [row] = await sql<{ count: number; resetMs: number }[]>`
        insert into try_count as t (key, uses, reset_at) values (${key}, 1, ${reset})
        on conflict (key) do update set
          uses = case when t.reset_at <= ${now} then 1 else t.uses + 1 end,
          reset_at = case when t.reset_at <= ${now} then excluded.reset_at else t.reset_at end
        returning uses as count, round(extract(epoch from reset_at) * 1000)::float8 as "resetMs"`;
      if (!row) throw new Error("bug: an upsert gave no row");
      if (row.count === 1) await clearOver(now);
      return { count: row.count, resetMs: row.resetMs };
    },

    returnTry: async (key: string): Promise<void> => {
      await sql`update try_count set uses = greatest(uses - 1, 0) where key = ${key}`;
    },

    clearTries: async (key: string): Promise<void> => {
      await sql`delete from try_count where key = ${key}`;
    },
  };
};
