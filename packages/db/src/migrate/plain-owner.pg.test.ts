import postgres from "postgres";
import { afterAll, beforeAll, expect, it } from "vitest";
import { createDayStore } from "../create-day-store.ts";
import type { EmbeddedServer } from "../embedded/start-embedded-postgres.ts";
import { startThrowawayPostgres } from "../embedded/start-throwaway-postgres.ts";
import { inAcademy } from "../in-academy.ts";
import { openDb } from "../open-db.ts";
import { createPostgresEntryStore } from "../postgres-entry-store.ts";
import { seedEverything } from "../testing/seed-everything.ts";
import { migrate } from "./migrate.ts";

/** A server of its own: roles belong to the whole server, and here they must be made by somebody without full powers. */
let server: EmbeddedServer;
beforeAll(async () => {
  const started = await startThrowawayPostgres();
  if (!started.ok) throw new Error(JSON.stringify(started.error));
  server = started.value;
});
afterAll(() => server.stop());

it("[DB2] works on a server where the owner may make roles and is no superuser", async () => {
  const admin = postgres(server.url, { max: 1, onnotice: () => undefined });
  await admin.unsafe("create role club_owner login createrole password 'club'");
  await admin.unsafe("create database club owner club_owner");
  await admin.end();
  const ownerUrl = Object.assign(new URL(server.url), {
    username: "club_owner",
    password: "club",
    pathname: "/club",
  }).href;
  const secret = "a secret of this test";
  const first = await migrate({ ownerUrl, secret, log: () => undefined });
  if (!first.ok) throw new Error(JSON.stringify(first.error));
  expect(await migrate({ ownerUrl, secret, log: () => undefined })).toEqual(first);

  const db = openDb(first.value.appUrl);
  await seedEverything(db, "curlew", false);
  await seedEverything(db, "heron", true);
  expect(await createDayStore(db).hasAcademy()).toBe(true);
  expect(await db.sql`select academy_id from find_code('hash of heron')`).toHaveLength(1);
  const heads = await createPostgresEntryStore(db, { log: () => undefined }).heads();
  expect(heads.ok && heads.value.heads.map(({ academyId }) => academyId).sort()).toEqual(["curlew", "heron"]);
  const seen = await inAcademy(db, "curlew", ({ sql }) => sql`select distinct academy_id from entry`);
  expect([...seen]).toEqual([{ academy_id: "curlew" }]);
  await db.close();
}, 60_000);
