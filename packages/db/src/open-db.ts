import { drizzle } from "drizzle-orm/postgres-js";
import postgres from "postgres";

/** Connections per process, in one place: two processes and a few spare fit a server's usual hundred. */
const POOL_SIZE = 10;
const CONNECT_TIMEOUT_S = 5;
/** A lost server is tried again soon and for ever; calls meanwhile fail rather than wait. */
const RECONNECT_MS = [50, 100, 200, 500, 1000];

export interface Db {
  readonly sql: postgres.Sql;
  /** Ends all connections, waiting up to 5 s for calls under way. */
  readonly close: () => Promise<void>;
}

/** Opens a pool as the application's role. Nothing is connected until the first call. */
export function openDb(appUrl: string, options: { readonly poolSize?: number } = {}): Db {
  const sql = postgres(appUrl, {
    max: options.poolSize ?? POOL_SIZE,
    connect_timeout: CONNECT_TIMEOUT_S,
    backoff: (attempt: number) => (RECONNECT_MS[Math.min(attempt, RECONNECT_MS.length - 1)] ?? 1000) / 1000,
    onnotice: () => undefined,
    connection: {
      application_name: "courtloom",
      lock_timeout: 5_000,
      statement_timeout: 30_000,
      idle_in_transaction_session_timeout: 30_000,
    },
  });
  // Drizzle sets the driver to hand dates and json over as text; done once here, so that both ways agree.
  drizzle(sql);
  return { sql, close: () => sql.end({ timeout: 5 }) };
}
