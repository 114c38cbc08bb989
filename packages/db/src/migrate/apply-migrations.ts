import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type postgres from "postgres";
import { isConnectionLost } from "../is-unavailable.ts";
import { MigrateFailure } from "./migrate-error.ts";

/** "courtloom" as a number; one per database. */
const LOCK_KEY = 0x63_6f_75_72;

interface Migration {
  readonly name: string;
  readonly hash: string;
  readonly text: string;
}

/**
 * Runs the numbered files that this database has not had yet, in order, each in a transaction of its own,
 * one program at a time. `sql` must be a single connection. Throws `MigrateFailure`.
 */
export async function applyMigrations(
  sql: postgres.Sql,
  folder: string,
  log: (line: string) => void,
): Promise<void> {
  await sql`select pg_advisory_lock(${LOCK_KEY})`;
  try {
    await sql`create table if not exists courtloom_migration
      (name text primary key, hash text not null, applied_at timestamptz not null default now())`;
    const applied = await sql<{ name: string; hash: string }[]>`select name, hash from courtloom_migration`;
    for (const migration of pending(readMigrations(folder), applied)) {
      log(`database: ${migration.name}`);
      await applyOne(sql, migration);
    }
  } finally {
    await sql`select pg_advisory_unlock(${LOCK_KEY})`;
  }
}

export function readMigrations(folder: string): readonly Migration[] {
  const names = readdirSync(folder).filter((name) => /^\d{4}_[a-z0-9_]+\.sql$/.test(name));
  return names.sort().map((name) => {
    const text = readFileSync(join(folder, name), "utf8");
    return { name, text, hash: createHash("sha256").update(text).digest("hex") };
  });
}

function pending(
  known: readonly Migration[],
  applied: readonly { readonly name: string; readonly hash: string }[],
): readonly Migration[] {
  const byName = new Map(known.map((migration) => [migration.name, migration]));
  for (const { name, hash } of applied) {
    const migration = byName.get(name);
    if (!migration) throw new MigrateFailure({ code: "newer_schema", migration: name });
    if (migration.hash !== hash) throw new MigrateFailure({ code: "changed_migration", migration: name });
  }
  const done = new Set(applied.map(({ name }) => name));
  return known.filter(({ name }) => !done.has(name));
}

/** One text is one transaction of the server's own. Name and hash hold letters, digits, `_` and `.` only. */
async function applyOne(sql: postgres.Sql, { name, hash, text }: Migration): Promise<void> {
  try {
    await sql.unsafe(`${text};\ninsert into courtloom_migration (name, hash) values ('${name}', '${hash}');`);
  } catch (error) {
    if (isConnectionLost(error)) throw error;
    const detail = error instanceof Error ? error.message : String(error);
    throw new MigrateFailure({ code: "migration_failed", migration: name, detail });
  }
}
