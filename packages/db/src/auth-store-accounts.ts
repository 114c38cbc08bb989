import { drizzle } from "drizzle-orm/postgres-js";
import { openDb } from "./open-db.ts";
import { account, session, user, verification } from "./schema/auth.ts";

/** Sign-ins and look-ups of sessions are short; the log's pool is another. */
const POOL_SIZE = 4;

/** The accounts, as the account library takes them: a Drizzle handle and its four tables. */
export interface AccountsDb {
  readonly kind: "drizzle";
  readonly db: object;
  readonly schema: {
    readonly user: object;
    readonly session: object;
    readonly account: object;
    readonly verification: object;
  };
  readonly close: () => Promise<void>;
}

/** Opens the accounts with the address that `migrate` gave for them. Nothing is connected until the first call. */
export function openAccounts(authUrl: string): AccountsDb {
  const { sql, close } = openDb(authUrl, { poolSize: POOL_SIZE });
  return { kind: "drizzle", db: drizzle(sql), schema: { user, session, account, verification }, close };
}
