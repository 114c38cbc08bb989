import { randomUUID } from "node:crypto";
import { startThrowawayPostgres } from "@courtloom/db/embedded";
import { migrate, migrateErrorSentence } from "@courtloom/db/migrate";
import postgres from "postgres";
import type { TestProject } from "vitest/node";

const TEMPLATE = "courtloom_template";

/**
 * One throw-away server for the run, with a migrated database that each test file copies
 * (`freshDatabase` of `@courtloom/db/testing`). Ended and deleted when the run ends.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await startThrowawayPostgres();
  if (!server.ok) throw new Error(`no Postgres for the tests: ${JSON.stringify(server.error)}`);
  const { url, stop } = server.value;
  try {
    const secret = randomUUID();
    await createDatabase(url, TEMPLATE);
    const migrated = await migrate({ ownerUrl: withDatabase(url, TEMPLATE), secret, log: () => undefined });
    if (!migrated.ok) throw new Error(migrateErrorSentence(migrated.error));
    project.provide("postgres", { ownerUrl: url, template: TEMPLATE, secret, ...migrated.value });
    return stop;
  } catch (error) {
    await stop();
    throw error;
  }
}

async function createDatabase(url: string, name: string): Promise<void> {
  const sql = postgres(url, { max: 1 });
  await sql`create database ${sql(name)}`;
  await sql.end();
}

function withDatabase(url: string, name: string): string {
  const changed = new URL(url);
  changed.pathname = `/${name}`;
  return changed.href;
}
