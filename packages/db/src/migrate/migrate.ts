import { fileURLToPath } from "node:url";
import { err, ok, type Result } from "@courtloom/core";
import postgres from "postgres";
import { applyMigrations } from "./apply-migrations.ts";
import { APP_ROLE, AUTH_ROLE, checkRoles, ensureRoles } from "./ensure-roles.ts";
import { connectError, type MigrateError, MigrateFailure } from "./migrate-error.ts";
import { rolePassword } from "./role-password.ts";

export interface MigrateOptions {
  /** Connection of the owner: may make tables and roles; used here and nowhere else. */
  readonly ownerUrl: string;
  /** The installation's secret; the roles' passwords come from it. */
  readonly secret: string;
  readonly log: (line: string) => void;
  /** Folder of the numbered files; default: those of this package. */
  readonly folder?: string;
}

/** What the application connects with. */
export interface MigratedUrls {
  readonly appUrl: string;
  /** Reaches the account library's tables only. */
  readonly authUrl: string;
}

const OWN_FOLDER = fileURLToPath(new URL("../../migrations", import.meta.url));
const OLDEST_SERVER = 140_000;

/** Brings a database up to this program. Harmless to repeat, and from several nodes at once. Rules DB1 to DB3. */
export async function migrate(options: MigrateOptions): Promise<Result<MigratedUrls, MigrateError>> {
  if (!URL.canParse(options.ownerUrl) || !/^postgres(ql)?:$/.test(new URL(options.ownerUrl).protocol)) {
    return err({ code: "bad_url" });
  }
  const url = new URL(options.ownerUrl);
  const sql = postgres(options.ownerUrl, { max: 1, connect_timeout: 10, onnotice: () => undefined });
  try {
    const version = await serverVersion(sql, url);
    if (version.number < OLDEST_SERVER) return err({ code: "old_server", version: version.text });
    await ensureRoles(sql, options.secret);
    await applyMigrations(sql, options.folder ?? OWN_FOLDER, options.log);
    await checkRoles(sql);
    return ok({
      appUrl: urlOf(url, APP_ROLE, options.secret),
      authUrl: urlOf(url, AUTH_ROLE, options.secret),
    });
  } catch (error) {
    if (error instanceof MigrateFailure) return err(error.reason);
    if (error instanceof postgres.PostgresError) {
      return err({ code: "migration_failed", migration: "set-up", detail: error.message });
    }
    return err(connectError(error, url));
  } finally {
    await sql.end({ timeout: 5 });
  }
}

async function serverVersion(
  sql: postgres.Sql,
  url: URL,
): Promise<{ readonly number: number; readonly text: string }> {
  try {
    const [row] = await sql<{ number: number; text: string }[]>`
      select current_setting('server_version_num')::int as number, current_setting('server_version') as text`;
    return row ?? { number: 0, text: "unknown" };
  } catch (error) {
    throw new MigrateFailure(connectError(error, url));
  }
}

function urlOf(owner: URL, role: string, secret: string): string {
  const url = new URL(owner);
  url.username = role;
  url.password = rolePassword(secret, role);
  return url.href;
}
