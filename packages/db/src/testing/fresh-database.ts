import { randomBytes } from "node:crypto";
import postgres from "postgres";
import { inject } from "vitest";

declare module "vitest" {
  interface ProvidedContext {
    /** The run's throw-away server, as `infra/test/postgres.ts` started it. */
    readonly postgres: {
      readonly ownerUrl: string;
      readonly template: string;
      readonly secret: string;
      readonly appUrl: string;
      readonly authUrl: string;
    };
  }
}

export interface FreshDatabase {
  readonly ownerUrl: string;
  readonly appUrl: string;
  readonly authUrl: string;
  /** The secret that the roles' passwords come from. */
  readonly secret: string;
  /** Ends what is still connected and deletes the database. */
  readonly drop: () => Promise<void>;
}

/** A migrated, empty database of the caller's own, or with `empty` one that no migration has seen. */
export async function freshDatabase(options: { readonly empty?: boolean } = {}): Promise<FreshDatabase> {
  const server = inject("postgres");
  const name = `test_${randomBytes(8).toString("hex")}`;
  const run = async (statement: (sql: postgres.Sql) => Promise<unknown>): Promise<void> => {
    const sql = postgres(server.ownerUrl, { max: 1, onnotice: () => undefined });
    try {
      await statement(sql);
    } finally {
      await sql.end();
    }
  };
  await run(
    (sql) => sql`create database ${sql(name)} template ${sql(options.empty ? "template0" : server.template)}`,
  );
  return {
    ownerUrl: withDatabase(server.ownerUrl, name),
    appUrl: withDatabase(server.appUrl, name),
    authUrl: withDatabase(server.authUrl, name),
    secret: server.secret,
    drop: () => run((sql) => sql`drop database ${sql(name)} with (force)`),
  };
}

function withDatabase(url: string, name: string): string {
  const changed = new URL(url);
  changed.pathname = `/${name}`;
  return changed.href;
}
