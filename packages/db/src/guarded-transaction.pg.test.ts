import postgres from "postgres";
import { expect, it } from "vitest";
import { inAcademy } from "./in-academy.ts";
import { isUnavailable } from "./is-unavailable.ts";
import { openDb } from "./open-db.ts";
import { freshDatabase } from "./testing/fresh-database.ts";

const POOL = 4;
const ROUNDS = 3;

it("[ES15] goes on with all its connections after they were ended in the middle of transactions", async () => {
  const database = await freshDatabase();
  const owner = postgres(database.ownerUrl, { max: 1 });
  const db = openDb(database.appUrl, { poolSize: POOL });
  const servers = async (): Promise<number> => {
    const pids = await Promise.all(
      Array.from({ length: POOL * 3 }, () =>
        inAcademy(
          db,
          "curlew",
          ({ sql }) => sql<{ pid: number }[]>`select pg_backend_pid() as pid, pg_sleep(0.05)`,
        ),
      ),
    );
    return new Set(pids.map(([row]) => row?.pid)).size;
  };
  for (let round = 0; round < ROUNDS; round += 1) {
    let entered = 0;
    let allIn = (): void => undefined;
    let reopen = (): void => undefined;
    const full = new Promise<void>((resolve) => {
      allIn = resolve;
    });
    const gate = new Promise<void>((resolve) => {
      reopen = resolve;
    });
    const afterwards: unknown[] = [];
    const caught = Array.from({ length: POOL }, () =>
      inAcademy(db, "curlew", async ({ sql }) => {
        await sql`select 1`;
        entered += 1;
        if (entered === POOL) allIn();
        await gate;
        try {
          await sql`select 2`;
        } catch (error) {
          afterwards.push(error);
          throw error;
        }
      }).catch((error: unknown) => error),
    );
    await full;
    await owner`
      select pg_terminate_backend(pid) from pg_stat_activity
      where usename = 'courtloom_app' and datname = current_database()`;
    // Told at once, while the work itself still waits for something else.
    const errors = await Promise.all(caught);
    expect(errors.map(isUnavailable)).toEqual(errors.map(() => true));
    reopen();
    expect(await servers()).toBe(POOL);
    expect(afterwards.map(isUnavailable)).toEqual(afterwards.map(() => true));
    expect(afterwards).toHaveLength(POOL);
  }
  await db.close();
  await owner.end();
  await database.drop();
});
