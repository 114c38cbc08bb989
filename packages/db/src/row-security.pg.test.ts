import postgres from "postgres";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { inAcademy } from "./in-academy.ts";
import { type Db, openDb } from "./open-db.ts";
import { type FreshDatabase, freshDatabase } from "./testing/fresh-database.ts";
import { seedEverything } from "./testing/seed-everything.ts";

interface TenantTable {
  readonly name: string;
  readonly enabled: boolean;
  readonly forced: boolean;
  readonly canSelect: boolean;
  readonly canUpdate: string | null;
  readonly canDelete: boolean;
  readonly canInsert: boolean;
}

let database: FreshDatabase;
let db: Db;
let owner: postgres.Sql;
let tables: readonly TenantTable[];

beforeAll(async () => {
  database = await freshDatabase();
  db = openDb(database.appUrl);
  owner = postgres(database.ownerUrl, { max: 1, onnotice: () => undefined });
  await seedEverything(db, "curlew", false);
  await seedEverything(db, "heron", true);
  tables = await owner<TenantTable[]>`
    select c.relname as name, c.relrowsecurity as enabled, c.relforcerowsecurity as forced,
           has_table_privilege('courtloom_app', c.oid, 'select') as "canSelect",
           (select min(u.attname) from pg_attribute u where u.attrelid = c.oid and u.attnum > 0
            and not u.attisdropped and has_column_privilege('courtloom_app', c.oid, u.attnum, 'update')) as "canUpdate",
           has_table_privilege('courtloom_app', c.oid, 'delete') as "canDelete",
           has_table_privilege('courtloom_app', c.oid, 'insert') as "canInsert"
    from pg_class c
    join pg_attribute a on a.attrelid = c.oid and a.attname = 'academy_id' and not a.attisdropped
    where c.relkind in ('r', 'p') order by c.relname`;
});

afterAll(async () => {
  await db.close();
  await owner.end();
  await database.drop();
});

const readable = (): readonly TenantTable[] => tables.filter(({ canSelect }) => canSelect);

describe("row security", () => {
  it("[DB5] covers every table that has an academy", async () => {
    expect(tables.length).toBeGreaterThanOrEqual(15);
    expect(tables.filter(({ enabled, forced }) => !enabled || !forced)).toEqual([]);
    const policies = await owner<{ tablename: string; qual: string; with_check: string; cmd: string }[]>`
      select tablename, qual, with_check, cmd from pg_policies where roles = '{courtloom_app}'`;
    const tenant = "(academy_id = current_setting('courtloom.academy_id'::text, true))";
    expect([...policies].sort((a, b) => (a.tablename < b.tablename ? -1 : 1))).toEqual(
      tables.map(({ name }) => ({ tablename: name, qual: tenant, with_check: tenant, cmd: "ALL" })),
    );
  });

  it("[DB5] begins the key of every such table with the academy", async () => {
    const keys = await owner<{ name: string }[]>`
      select c.relname as name from pg_index i
      join pg_class c on c.oid = i.indrelid
      join pg_attribute a on a.attrelid = c.oid and a.attnum = i.indkey[0]
      where i.indisprimary and a.attname = 'academy_id' order by c.relname`;
    expect(keys.map(({ name }) => name)).toEqual(tables.map(({ name }) => name));
  });

  it("[DB5] gives the look-up role nothing but what it looks up, and nobody signs in as it", async () => {
    const policies = await owner<{ policy: string }[]>`
      select tablename || ' ' || cmd as policy from pg_policies where roles = '{courtloom_lookup}' order by 1`;
    expect(policies.map(({ policy }) => policy)).toEqual([
      "academy INSERT",
      "academy SELECT",
      "court_code SELECT",
      "courtside_session SELECT",
      "hand_over SELECT",
      "heard SELECT",
      "lane SELECT",
      "match SELECT",
      "match_head SELECT",
      "member INSERT",
      "member SELECT",
    ]);
    const others = await owner`
      select tablename from pg_policies where roles <> '{courtloom_lookup}' and roles <> '{courtloom_app}'`;
    expect(others).toHaveLength(0);
    const [role] = await owner`select rolcanlogin from pg_roles where rolname = 'courtloom_lookup'`;
    expect(role).toEqual({ rolcanlogin: false });
  });

  it("[DB5] shows each academy its own rows and none of another, with no filter in the statement", async () => {
    for (const { name } of readable()) {
      for (const [own, other] of [
        ["curlew", "heron"],
        ["heron", "curlew"],
      ] as const) {
        const seen = await inAcademy(
          db,
          own,
          ({ sql }) => sql<{ academy_id: string }[]>`select academy_id from ${sql(name)}`,
        );
        expect(seen.length, `${name} of ${own}`).toBeGreaterThan(0);
        expect(
          seen.filter((row) => row.academy_id !== own),
          `${name} of ${other}`,
        ).toEqual([]);
      }
    }
  });

  it("[DB5] shows nothing without a tenant, also on a connection that had one before", async () => {
    const one = openDb(database.appUrl, { poolSize: 1 });
    await inAcademy(one, "curlew", async ({ sql }) => sql`select 1`);
    for (const { name } of readable()) {
      const [row] = await one.sql`select count(*)::int as count from ${one.sql(name)}`;
      expect(row, name).toEqual({ count: 0 });
    }
    await one.close();
  });

  it("[DB5] lets no academy change or delete another's rows", async () => {
    for (const { name, canUpdate, canDelete } of tables) {
      if (canUpdate !== null) {
        const changed = await inAcademy(
          db,
          "curlew",
          ({ sql }) =>
            sql`update ${sql(name)} set ${sql(canUpdate)} = ${sql(canUpdate)} where academy_id = 'heron'`,
        );
        expect(changed.count, name).toBe(0);
      }
      // What may not be deleted at all cannot be deleted across academies either.
      expect(canDelete, name).toBe(false);
    }
  });

  it("[DB5] lets no academy write a row for another, nor without a tenant", async () => {
    for (const { name, canInsert } of tables) {
      if (!canInsert) continue;
      const [foreign] = await owner`
        select to_json(t)::text as row from ${owner(name)} t where academy_id = 'heron' limit 1`;
      expect(foreign, `a row in ${name}`).toBeDefined();
      const insert = (sql: postgres.Sql | postgres.TransactionSql) => sql`
        insert into ${sql(name)}
        select * from json_populate_record(null::${sql(name)}, ${foreign?.row}::json)`;
      const refused = { code: "42501", message: expect.stringContaining("row-level security") };
      await expect(
        inAcademy(db, "curlew", ({ sql }) => insert(sql)),
        name,
      ).rejects.toMatchObject(refused);
      await expect(insert(db.sql), name).rejects.toMatchObject(refused);
    }
  });

  it("[DB5] keeps many academies apart on a few shared connections", async () => {
    const asked = Array.from({ length: 60 }, (_, i) => (i % 2 === 0 ? "curlew" : "heron"));
    const seen = await Promise.all(
      asked.map((academyId) =>
        inAcademy(db, academyId, async ({ sql }) => {
          const rows = await Promise.all([
            sql<{ academy_id: string }[]>`select academy_id from player`,
            sql<{ academy_id: string }[]>`select academy_id from entry`,
          ]);
          return [...new Set(rows.flat().map((row) => row.academy_id))];
        }),
      ),
    );
    expect(seen).toEqual(asked.map((academyId) => [academyId]));
  });
});

describe("rights of the roles", () => {
  const refused = (sql: postgres.Sql, statement: string) =>
    expect(sql.unsafe(statement), statement).rejects.toMatchObject({ code: "42501" });

  it("[DB2, DB15, DB23, AL15] lets the application neither change nor delete an entry, nor read the audit", async () => {
    for (const statement of [
      "update entry set n = n",
      "delete from entry",
      "truncate entry",
      "delete from rejected_entry",
      "update rejected_entry set raw = raw",
      "select * from audit",
      "update hand_over set code_hash = 'other'",
      "update hand_over set expires_at = expires_at",
      "delete from hand_over",
      "delete from alert",
      "update alert set raised_at = raised_at",
      "update alert set episode = episode",
      "delete from alert_notice",
      "update alert_notice set recipient = recipient",
      "delete from alert_mark",
      "update alert_mark set details = details",
      "update audit set actor = actor",
      "delete from audit",
      "update log_meta set incarnation = 'other'",
      "update academy set is_demo = true",
      "update academy set academy_id = 'other'",
      "insert into academy (academy_id, name, time_zone, language) values ('x', 'x', 'x', 'x')",
      "create table mine (id int)",
      "alter table entry disable row level security",
      "drop policy by_academy on entry",
      "set role courtloom_lookup",
      "set role courtloom_auth",
      'select * from auth."user"',
      "select * from courtloom_migration",
      "select protect_by_academy('entry')",
    ]) {
      await refused(db.sql, statement);
    }
  });

  it("[DB2] lets the account library's role reach nothing of an academy, nor any look-up", async () => {
    const auth = postgres(database.authUrl, { max: 1 });
    for (const { name } of tables) await refused(auth, `select * from ${name}`);
    await refused(auth, "select * from find_member('x')");
    await refused(auth, "select * from read_heads(null)");
    await refused(auth, "create table public.mine (id int)");
    await auth.end();
  });

  it("[DB6] pins the search path of every function that runs with another's rights", async () => {
    const functions = await owner<{ name: string; config: string[] | null; owner: string }[]>`
      select p.proname as name, p.proconfig as config, r.rolname as owner
      from pg_proc p join pg_roles r on r.oid = p.proowner
      where p.prosecdef and p.pronamespace = 'public'::regnamespace order by p.proname`;
    expect(functions.map(({ name }) => name)).toEqual([
      "create_academy",
      "demo_academy",
      "find_code",
      "find_courtside_session",
      "find_hand_over",
      "find_member",
      "has_any_academy",
      "read_heads",
    ]);
    for (const one of functions) {
      expect(one).toMatchObject({ config: ["search_path=pg_catalog, pg_temp"], owner: "courtloom_lookup" });
    }
  });
});

describe("looking up before the academy is known", () => {
  it("[DB6] finds a code and a session by their hashes only, and ends a session with its code", async () => {
    const code = await db.sql`select academy_id, code_id, kind, revoked_at from find_code('hash of heron')`;
    expect([...code]).toEqual([{ academy_id: "heron", code_id: "code", kind: "court", revoked_at: null }]);
    expect(await db.sql`select * from find_code('hash of nobody')`).toHaveLength(0);
    const find = () =>
      db.sql`select academy_id, name, kind, revoked_at is not null as revoked, expires_at < now() + interval '61 min' as soon
             from find_courtside_session('token of curlew')`;
    const open = { academy_id: "curlew", name: "Mila", kind: "court", soon: true };
    expect([...(await find())]).toEqual([{ ...open, revoked: false }]);
    await inAcademy(db, "curlew", ({ sql }) => sql`update court_code set revoked_at = now()`);
    expect([...(await find())]).toEqual([{ ...open, revoked: true }]);
  });

  it("[DB6] finds the member of an account", async () => {
    await inAcademy(db, "curlew", ({ sql }) => sql`update member set user_id = 'account-1'`);
    const found =
      await db.sql`select academy_id, academy_name, role, display_name from find_member('account-1')`;
    expect([...found]).toEqual([
      { academy_id: "curlew", academy_name: "Academy curlew", role: "director", display_name: "Ines" },
    ]);
    expect(await db.sql`select * from find_member('account-2')`).toHaveLength(0);
  });

  it("[DB7] sets up one academy of each kind, however many try", async () => {
    const tries = await Promise.all(
      Array.from(
        { length: 5 },
        (_, i) =>
          db.sql<{ made: boolean }[]>`
            select create_academy(${`late-${i}`}, 'Late', 'UTC', 'en', ${i % 2 === 0}, 'm', 'Late', null) as made`,
      ),
    );
    expect(tries.map(([row]) => row?.made)).toEqual([false, false, false, false, false]);
    const [count] = await owner`select count(*)::int as count from academy`;
    expect(count).toEqual({ count: 2 });
  });
});
