import postgres from "postgres";
import { MigrateFailure } from "./migrate-error.ts";
import { scramVerifier } from "./role-password.ts";

export const APP_ROLE = "courtloom_app";
export const AUTH_ROLE = "courtloom_auth";
/** Owns the look-up functions; nobody signs in as it. */
const LOOKUP_ROLE = "courtloom_lookup";

/** Roles belong to the whole server: another database's migration may be changing them in this moment. */
const RACES = new Set(["42710", "23505", "XX000"]);
const TRIES = 20;

/** Makes or mends the application's roles. Throws `MigrateFailure`. */
export async function ensureRoles(sql: postgres.Sql, secret: string): Promise<void> {
  await ensureRole(sql, APP_ROLE, `login password '${scramVerifier(secret, APP_ROLE)}'`);
  await ensureRole(sql, AUTH_ROLE, `login password '${scramVerifier(secret, AUTH_ROLE)}'`);
  await ensureRole(sql, LOOKUP_ROLE, "nologin");
  await retryRaces(() =>
    sql`select from pg_roles where rolname = current_user and rolsuper`.then(async (superuser) => {
      // Handing the look-up functions over needs membership; a superuser has it without.
      if (superuser.length === 0) await sql.unsafe(`grant ${LOOKUP_ROLE} to current_user`);
    }),
  );
  await retryRaces(async () => {
    const database = await sql<{ name: string }[]>`select quote_ident(current_database()) as name`;
    await sql.unsafe(`grant connect on database ${database[0]?.name} to ${APP_ROLE}, ${AUTH_ROLE}`);
  });
}

/** Refuses a role that would see every academy, whoever gave it that power. */
export async function checkRoles(sql: postgres.Sql): Promise<void> {
  const unsafe = await sql<{ rolname: string }[]>`
    select rolname from pg_roles r
    where rolname in (${APP_ROLE}, ${AUTH_ROLE}, ${LOOKUP_ROLE})
      and (rolsuper or rolbypassrls
           or exists (select from pg_class c where c.relowner = r.oid
                      and c.relkind in ('r', 'p', 'v', 'm') and r.rolname <> ${AUTH_ROLE}))`;
  if (unsafe[0]) throw new MigrateFailure({ code: "unsafe_role", role: unsafe[0].rolname });
}

async function ensureRole(sql: postgres.Sql, role: string, options: string): Promise<void> {
  try {
    await retryRaces(async () => {
      const found = await sql`select from pg_roles where rolname = ${role}`;
      // Text of our own making only: a role's name and options cannot be parameters.
      await sql.unsafe(`${found.length > 0 ? "alter" : "create"} role ${role} ${options}`);
    });
  } catch (error) {
    if (!(error instanceof postgres.PostgresError) || error.code !== "42501") throw error;
    const [me] = await sql<{ user: string }[]>`select current_user as user`;
    throw new MigrateFailure({ code: "cannot_create_roles", user: me?.user ?? "the owner" });
  }
}

async function retryRaces(change: () => Promise<void>): Promise<void> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await change();
    } catch (error) {
      const race = error instanceof postgres.PostgresError && RACES.has(error.code);
      if (!race || attempt === TRIES) throw error;
    }
  }
}
