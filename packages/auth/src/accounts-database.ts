/**
 * Where accounts and their sessions are kept.
 * "drizzle": a Drizzle handle connected as the role that alone reaches the accounts, with its four tables.
 * "memory": for tests; gone when the process ends.
 */
export type AccountsDatabase =
  | { readonly kind: "drizzle"; readonly db: object; readonly schema: AccountTables }
  | { readonly kind: "memory"; readonly tables: MemoryTables };

/** The four tables of the account library, as Drizzle tables. */
export interface AccountTables {
  readonly user: object;
  readonly session: object;
  readonly account: object;
  readonly verification: object;
}

/** The same four tables as lists of rows. */
export type MemoryTables = Record<"user" | "session" | "account" | "verification", Record<string, unknown>[]>;
