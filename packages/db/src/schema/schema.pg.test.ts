import { is } from "drizzle-orm";
import { getTableConfig, PgTable } from "drizzle-orm/pg-core";
import postgres from "postgres";
import { expect, it } from "vitest";
import { freshDatabase } from "../testing/fresh-database.ts";
import * as academy from "./academy.ts";
import * as alert from "./alert.ts";
import * as audit from "./audit.ts";
import * as auth from "./auth.ts";
import * as choiceFit from "./choice-fit.ts";
import * as courtCode from "./court-code.ts";
import * as day from "./day.ts";
import * as handOver from "./hand-over.ts";
import * as match from "./match.ts";
import * as matchLog from "./match-log.ts";
import * as plan from "./plan.ts";
import * as player from "./player.ts";
import * as tally from "./tally.ts";
import * as tryCount from "./try-count.ts";
import * as watchSetting from "./watch-setting.ts";

interface ColumnRow {
  readonly table: string;
  readonly column: string;
  readonly type: string;
  readonly notNull: boolean;
  readonly hasDefault: boolean;
}

const modules = [
  academy,
  alert,
  audit,
  auth,
  choiceFit,
  courtCode,
  day,
  handOver,
  match,
  matchLog,
  plan,
  player,
  tally,
  tryCount,
  watchSetting,
];
const tables = modules.flatMap((module) => Object.values(module)).filter((value) => is(value, PgTable));

const declaredColumns = (): ColumnRow[] =>
  tables.flatMap((table) => {
    const { name, schema, columns } = getTableConfig(table);
    return columns.map((column) => ({
      table: `${schema ?? "public"}.${name}`,
      column: column.name,
      type: column.getSQLType().replace("timestamp with time zone", "timestamptz"),
      notNull: column.notNull,
      hasDefault: column.hasDefault,
    }));
  });

const declaredKeys = (): string[] =>
  tables.map((table) => {
    const { name, schema, columns, primaryKeys } = getTableConfig(table);
    const single = columns.filter((column) => column.primary).map((column) => column.name);
    const key = primaryKeys[0]?.columns.map((column) => column.name) ?? single;
    return `${schema ?? "public"}.${name}: ${key.join(", ")}`;
  });

const byText = <T>(rows: Iterable<T>): T[] =>
  [...rows].sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));

it("[DB1] declares the tables as the migrations make them", async () => {
  const database = await freshDatabase();
  const sql = postgres(database.ownerUrl, { max: 1 });
  const made = await sql<ColumnRow[]>`
    select n.nspname || '.' || c.relname as table, a.attname as column,
           replace(format_type(a.atttypid, a.atttypmod), 'timestamp with time zone', 'timestamptz') as type,
           a.attnotnull as "notNull", a.atthasdef as "hasDefault"
    from pg_attribute a join pg_class c on c.oid = a.attrelid join pg_namespace n on n.oid = c.relnamespace
    where n.nspname in ('public', 'auth') and c.relkind = 'r' and a.attnum > 0 and not a.attisdropped
      and c.relname <> 'courtloom_migration'`;
  const keys = await sql<{ key: string }[]>`
    select n.nspname || '.' || c.relname || ': ' ||
           (select string_agg(a.attname, ', ' order by k.at) from unnest(i.indkey) with ordinality as k (num, at)
            join pg_attribute a on a.attrelid = c.oid and a.attnum = k.num) as key
    from pg_index i join pg_class c on c.oid = i.indrelid join pg_namespace n on n.oid = c.relnamespace
    where i.indisprimary and n.nspname in ('public', 'auth') and c.relname <> 'courtloom_migration'`;
  await sql.end();
  await database.drop();
  expect(byText(declaredColumns())).toEqual(byText(made.map((row) => ({ ...row }))));
  expect(byText(declaredKeys())).toEqual(byText(keys.map(({ key }) => key)));
});
