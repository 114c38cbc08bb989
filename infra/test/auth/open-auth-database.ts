import { randomUUID } from "node:crypto";
import { createAuthStore, openAccounts, openDb } from "@courtloom/db";
import { freshDatabase } from "@courtloom/db/testing";
import postgres from "postgres";
import { openMatches } from "./open-matches.ts";

/** Ids of an academy with a director, a day and a court. */
export interface MadeAcademy {
  readonly academyId: string;
  readonly memberId: string;
  readonly userId: string;
  readonly dayId: string;
  readonly courtId: string;
}

const TABLES = `select table_schema as schema, table_name as name from information_schema.tables
  where table_schema in ('auth', 'public') and table_type = 'BASE TABLE'`;

/** A database of one's own with the stores that sign people in, connected the way the application is. */
export async function openAuthDatabase() {
  const database = await freshDatabase();
  const db = openDb(database.appUrl);
  const accounts = openAccounts(database.authUrl);
  const owner = postgres(database.ownerUrl, { max: 2, onnotice: () => undefined });

  const makeAcademy = async (isDemo: boolean, userId: string = randomUUID()): Promise<MadeAcademy> => {
    const [academyId, memberId, dayId, courtId] = [randomUUID(), randomUUID(), randomUUID(), randomUUID()];
    await owner`insert into academy (academy_id, name, time_zone, language, is_demo)
      values (${academyId}, 'Curlew Reach', 'Europe/Lisbon', 'en', ${isDemo})`;
    await owner`insert into member (academy_id, member_id, role, display_name, user_id)
      values (${academyId}, ${memberId}, 'director', 'Ada Finch', ${userId})`;
    await owner`insert into day (academy_id, day_id, name, date)
      values (${academyId}, ${dayId}, 'Match day', '2026-05-30')`;
    await owner`insert into court (academy_id, day_id, court_id, no, name)
      values (${academyId}, ${dayId}, ${courtId}, 1, 'Court 1')`;
    return { academyId, memberId, userId, dayId, courtId };
  };

  /** All rows of all tables, as text. */
  const everything = async (): Promise<string> => {
    const tables = await owner.unsafe<{ schema: string; name: string }[]>(TABLES);
    const dumps = tables.map(
      ({ schema, name }) => owner`select t::text as row from ${owner(`${schema}.${name}`)} t`,
    );
    const rows = (await Promise.all(dumps)).flatMap((dump) => dump.map(({ row }) => String(row)));
    return rows.join("\n");
  };

  const close = async (): Promise<void> => {
    await Promise.all([db.close(), accounts.close(), owner.end()]);
    await database.drop();
  };

  const store = createAuthStore(db);
  return { database, db, store, accounts, owner, makeAcademy, ...openMatches(db), everything, close };
}
