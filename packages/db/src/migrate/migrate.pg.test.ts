import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import postgres from "postgres";
import { afterAll, afterEach, beforeEach, describe, expect, it } from "vitest";
import { type FreshDatabase, freshDatabase } from "../testing/fresh-database.ts";
import { checkDurability } from "./check-durability.ts";
import { migrate } from "./migrate.ts";
import { renewIncarnation } from "./renew-incarnation.ts";

const run = promisify(execFile);
const log = (): void => undefined;
const folders: string[] = [];

/** A folder with migrations of the test's own. */
function folderOf(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), "courtloom-migrations-"));
  folders.push(folder);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

let database: FreshDatabase;
beforeEach(async () => {
  database = await freshDatabase({ empty: true });
});
afterEach(() => database.drop());
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true });
});

async function asOwner<T>(ask: (sql: postgres.Sql) => Promise<T>): Promise<T> {
  const sql = postgres(database.ownerUrl, { max: 1, onnotice: () => undefined });
  try {
    return await ask(sql);
  } finally {
    await sql.end();
  }
}

describe("migrating", () => {
  it("[DB1] applies every file once, in order, and changes nothing the second time", async () => {
    const { ownerUrl, secret } = database;
    const lines: string[] = [];
    const first = await migrate({ ownerUrl, secret, log: (line) => lines.push(line) });
    expect(first).toEqual({ ok: true, value: { appUrl: database.appUrl, authUrl: database.authUrl } });
    expect(lines.length).toBeGreaterThanOrEqual(3);
    expect(lines).toEqual([...lines].sort());
    const second = await migrate({ ownerUrl, secret, log: (line) => lines.push(`again: ${line}`) });
    expect(second).toEqual(first);
    expect(lines.filter((line) => line.startsWith("again"))).toEqual([]);
  });

  it("[DB1] runs from two programs at once and applies each file once", async () => {
    const module = fileURLToPath(new URL("./migrate.ts", import.meta.url));
    const program = `
      import { migrate } from ${JSON.stringify(module)};
      const lines = [];
      const done = await migrate({ ownerUrl: process.argv[1], secret: process.argv[2], log: (l) => lines.push(l) });
      if (!done.ok) throw new Error(JSON.stringify(done.error));
      console.log(lines.length);`;
    const args = ["--input-type=module", "-e", program, "--", database.ownerUrl, database.secret];
    const both = await Promise.all([run(process.execPath, args), run(process.execPath, args)]);
    const applied = await asOwner((sql) => sql`select name from courtloom_migration`);
    const counts = both.map(({ stdout }) => Number(stdout.trim()));
    expect(counts[0] === 0 || counts[1] === 0).toBe(true);
    expect((counts[0] ?? 0) + (counts[1] ?? 0)).toBe(applied.length);
  });

  it("[DB2] lets both roles in with the passwords from the secret, without powers", async () => {
    const { ownerUrl, secret } = database;
    await migrate({ ownerUrl, secret, log });
    for (const url of [database.appUrl, database.authUrl]) {
      const sql = postgres(url, { max: 1 });
      const [me] = await sql`select rolsuper, rolbypassrls from pg_roles where rolname = current_user`;
      expect(me).toEqual({ rolsuper: false, rolbypassrls: false });
      await sql.end();
    }
  });

  it("[DB3] undoes a step that fails, and names it", async () => {
    const folder = folderOf({
      "0001_good.sql": "create table kept (id int);",
      "0002_bad.sql": "create table half (id int); select broken;",
    });
    const failed = await migrate({ ownerUrl: database.ownerUrl, secret: database.secret, log, folder });
    expect(failed).toMatchObject({
      ok: false,
      error: { code: "migration_failed", migration: "0002_bad.sql" },
    });
    const [found] = await asOwner(
      (sql) => sql`select to_regclass('kept') is not null as kept, to_regclass('half') is not null as half`,
    );
    expect(found).toEqual({ kept: true, half: false });
  });

  it("[DB3] refuses a database of a newer program, and one made by another file of the same name", async () => {
    const { ownerUrl, secret } = database;
    const text = "create table one (id int);";
    const newer = folderOf({ "0001_one.sql": text, "0002_two.sql": "create table two (id int);" });
    await migrate({ ownerUrl, secret, log, folder: newer });
    const older = folderOf({ "0001_one.sql": text });
    expect(await migrate({ ownerUrl, secret, log, folder: older })).toEqual({
      ok: false,
      error: { code: "newer_schema", migration: "0002_two.sql" },
    });
    const other = folderOf({ "0001_one.sql": `${text} -- other`, "0002_two.sql": "" });
    expect(await migrate({ ownerUrl, secret, log, folder: other })).toEqual({
      ok: false,
      error: { code: "changed_migration", migration: "0001_one.sql" },
    });
  });

  it("[DB3] says why it cannot begin", async () => {
    const { ownerUrl, secret } = database;
    const change = (parts: { port?: string; password?: string; pathname?: string }): string =>
      Object.assign(new URL(ownerUrl), parts).href;
    const codeOf = async (url: string): Promise<string> => {
      const result = await migrate({ ownerUrl: url, secret, log });
      return result.ok ? "ok" : result.error.code;
    };
    expect(await codeOf("localhost")).toBe("bad_url");
    expect(await codeOf(change({ port: "1" }))).toBe("unreachable");
    expect(await codeOf(change({ password: "wrong" }))).toBe("wrong_password");
    expect(await codeOf(change({ pathname: "/nowhere" }))).toBe("no_such_database");
  });

  it("[DB3] asks for the right to make roles when the owner lacks it", async () => {
    await asOwner(async (sql) => {
      await sql.unsafe("drop role if exists plain_owner");
      await sql.unsafe("create role plain_owner login password 'plain'");
    });
    const url = new URL(database.ownerUrl);
    url.username = "plain_owner";
    url.password = "plain";
    expect(await migrate({ ownerUrl: url.href, secret: database.secret, log })).toEqual({
      ok: false,
      error: { code: "cannot_create_roles", user: "plain_owner" },
    });
    await asOwner((sql) => sql.unsafe("drop role plain_owner"));
  });

  it("[DB4] finds what is not durable, and an owner's connection, before the first entry", async () => {
    await migrate({ ownerUrl: database.ownerUrl, secret: database.secret, log });
    const app = postgres(database.appUrl, { max: 1 });
    const [setting] = await app`select current_setting('fsync') as fsync`;
    const checked = await checkDurability(app);
    const codes = checked.ok ? [] : checked.error.map(({ code }) => code);
    // The tests' own server runs without fsync for speed; the application's role has no powers.
    expect(codes.includes("fsync_off")).toBe(setting?.fsync === "off");
    expect(codes).not.toContain("superuser");
    expect(codes).not.toContain("bypasses_row_security");
    await app`set synchronous_commit = off`;
    const off = await checkDurability(app);
    expect(off.ok ? [] : off.error.map(({ code }) => code)).toContain("synchronous_commit_off");
    await app.end();
    const owner = await asOwner(checkDurability);
    expect(owner.ok ? [] : owner.error.map(({ code }) => code)).toContain("superuser");
  });

  it("[ES13] gives the log a new id after a restore", async () => {
    await migrate({ ownerUrl: database.ownerUrl, secret: database.secret, log });
    const read = () => asOwner((sql) => sql`select incarnation from log_meta`);
    const before = await read();
    const renewed = await renewIncarnation(database.ownerUrl);
    expect(await read()).toEqual([{ incarnation: renewed }]);
    expect(before).not.toEqual([{ incarnation: renewed }]);
  });
});
