import { randomUUID } from "node:crypto";
import postgres from "postgres";

/**
 * After a restore from a backup: gives the log a new id, so that mirrors drop what they hold and phones
 * send again what the backup lacks. Answers the new id. Connects as owner.
 */
export async function renewIncarnation(ownerUrl: string): Promise<string> {
  const sql = postgres(ownerUrl, { max: 1, connect_timeout: 10, onnotice: () => undefined });
  try {
    const incarnation = randomUUID();
    await sql`update log_meta set incarnation = ${incarnation}, began_at = now()`;
    return incarnation;
  } finally {
    await sql.end({ timeout: 5 });
  }
}
