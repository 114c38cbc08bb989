import { err, ok, type Result } from "@courtloom/core";
import postgres from "postgres";
import type { EmbeddedError } from "./embedded-error.ts";
import { DATABASE_NAME, ownerUrl, type Remembered } from "./remembered.ts";

/** Without these a power cut may lose what was acknowledged; `values` are those that are safe. */
const DURABLE: Readonly<Record<string, (value: string) => boolean>> = {
  fsync: (value) => value === "on",
  synchronous_commit: (value) => value !== "off",
  full_page_writes: (value) => value === "on",
};

export interface Unsafe {
  readonly setting: string;
  readonly value: string;
}

/** The settings, among those that acknowledgements rely on, that are not safe on the server at `url`. */
export async function unsafeSettings(url: string): Promise<readonly Unsafe[]> {
  return withConnection(url, async (sql) => {
    const names = Object.keys(DURABLE);
    const rows = await sql<{ name: string; setting: string }[]>`
      select name, setting from pg_settings where name = any(${names})`;
    return rows
      .filter((row) => DURABLE[row.name]?.(row.setting) === false)
      .map((row) => ({ setting: row.name, value: row.setting }));
  });
}

/** Makes the product's database if it is not there, and checks that what it will store is stored for good. */
export async function readyDatabase(
  remembered: Remembered,
  durable: boolean,
): Promise<Result<void, EmbeddedError>> {
  await withConnection(ownerUrl(remembered, "postgres"), async (sql) => {
    const found = await sql`select 1 from pg_database where datname = ${DATABASE_NAME}`;
    if (found.length === 0) await sql`create database ${sql(DATABASE_NAME)}`;
  });
  if (!durable) return ok(undefined);
  const [first] = await unsafeSettings(ownerUrl(remembered, DATABASE_NAME));
  return first ? err({ code: "not-durable", ...first }) : ok(undefined);
}

/** True if a server at the remembered port takes our password. */
export async function answers(remembered: Remembered): Promise<boolean> {
  try {
    return await withConnection(
      ownerUrl(remembered, "postgres"),
      async (sql) => (await sql`select 1`).length === 1,
    );
  } catch {
    // Not yet, or not ours: for the caller the same.
    return false;
  }
}

async function withConnection<T>(url: string, use: (sql: postgres.Sql) => Promise<T>): Promise<T> {
  const sql = postgres(url, { max: 1, connect_timeout: 5, onnotice: () => undefined });
  try {
    return await use(sql);
  } finally {
    await sql.end({ timeout: 1 });
  }
}
