import { PgDatabase, PgDialect } from "drizzle-orm/pg-core";
import { type PostgresJsQueryResultHKT, PostgresJsSession } from "drizzle-orm/postgres-js";
import type postgres from "postgres";
import { guardedTransaction } from "./guarded-transaction.ts";
import type { Db } from "./open-db.ts";

/** One transaction of one academy: the driver itself for what is hot, Drizzle over it for the rest. */
export interface Tx {
  readonly sql: postgres.TransactionSql;
  readonly orm: PgDatabase<PostgresJsQueryResultHKT>;
}

const dialect = new PgDialect();

/**
 * The only way to the rows of an academy: runs `work` in one transaction that sees and writes this
 * academy's rows and no others, however its statements are written. Rule DB5.
 */
export async function inAcademy<T>(db: Db, academyId: string, work: (tx: Tx) => Promise<T>): Promise<T> {
  return guardedTransaction(db.sql, async (sql) => {
    // Sent before the work's first statement and not waited for: the server takes them in order.
    const tenant = sql`select set_config('courtloom.academy_id', ${academyId}, true)`.execute();
    const orm = drizzleOver(sql);
    const [, done] = await Promise.all([tenant, work({ sql, orm })]);
    return done;
  });
}

/** Drizzle on a transaction that is open already; its own transactions make their session in the same way. */
function drizzleOver(sql: postgres.TransactionSql): Tx["orm"] {
  const session = new PostgresJsSession(sql as unknown as postgres.Sql, dialect, undefined);
  return new PgDatabase<PostgresJsQueryResultHKT>(dialect, session, undefined);
}
