import { err, ok, type Result } from "@courtloom/core";
import type postgres from "postgres";

/** A setting or power under which "acknowledged" would not mean "on disk", or academies would not be kept apart. */
export interface DurabilityFault {
  readonly code:
    | "fsync_off"
    | "synchronous_commit_off"
    | "full_page_writes_off"
    | "superuser"
    | "bypasses_row_security";
  /** What it means and what to do. */
  readonly sentence: string;
}

const FAULTS: { readonly [Code in DurabilityFault["code"]]: string } = {
  fsync_off: "fsync is off: a power cut can lose acknowledged points. Set fsync = on in postgresql.conf.",
  synchronous_commit_off:
    "synchronous_commit is off: a crash can lose acknowledged points. Set synchronous_commit = on.",
  full_page_writes_off:
    "full_page_writes is off: a power cut can spoil the database. Set full_page_writes = on in postgresql.conf.",
  superuser: "The application is connected as a superuser. Start it with the address that migrate gave.",
  bypasses_row_security:
    "The application's role passes by row security. As an administrator run: alter role courtloom_app nobypassrls;",
};

/** Checks the connection that the application will use; a program asks before it takes the first entry. Rule DB4. */
export async function checkDurability(
  sql: postgres.Sql,
): Promise<Result<undefined, readonly DurabilityFault[]>> {
  const [row] = await sql<Record<DurabilityFault["code"], boolean>[]>`
    select current_setting('fsync') <> 'on' as fsync_off,
           current_setting('synchronous_commit') = 'off' as synchronous_commit_off,
           current_setting('full_page_writes') <> 'on' as full_page_writes_off,
           rolsuper as superuser,
           rolbypassrls as bypasses_row_security
    from pg_roles where rolname = current_user`;
  const faults = (Object.keys(FAULTS) as DurabilityFault["code"][])
    .filter((code) => row?.[code] !== false)
    .map((code) => ({ code, sentence: FAULTS[code] }));
  return faults.length === 0 ? ok(undefined) : err(faults);
}
