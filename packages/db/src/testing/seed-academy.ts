import { createDayStore } from "../create-day-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { FORMAT } from "./log-fixtures.ts";

/** An academy of that id with two players, for tests of the log; only one per database unless `isDemo`. */
export async function seedAcademy(db: Db, academyId: string, isDemo = false): Promise<void> {
  const day = createDayStore(db);
  const academy = {
    academyId,
    name: `Academy ${academyId}`,
    timeZone: "Europe/Lisbon",
    language: "en",
    isDemo,
  };
  const made = await day.setupAcademy({ ...academy, director: { displayName: "Ines", userId: null } });
  if (!made.ok) throw new Error(made.error.code);
  const base = { academyId, birthYear: 2012, squad: "Green", own: true, level: 3 };
  await day.addPlayer({ ...base, playerId: "player-a", displayName: "Noor", hand: "right" });
  await day.addPlayer({ ...base, playerId: "player-b", displayName: "Teo", hand: "left" });
}

/** A match of the two players, outside any day. */
export async function seedMatch(db: Db, academyId: string, matchId: string): Promise<void> {
  const added = await createDayStore(db).addMatch({
    academyId,
    matchId,
    dayId: null,
    courtId: null,
    playedOn: "2026-05-30",
    playerIds: { A: "player-a", B: "player-b" },
    format: FORMAT,
  });
  if (!added.ok) throw new Error(added.error.code);
}

/** Rows of a table that one academy sees, whatever the statement says. */
export const countRows = (db: Db, academyId: string, table: string): Promise<number> =>
  inAcademy(db, academyId, async ({ sql }) => {
    const [row] = await sql<{ count: number }[]>`select count(*)::int as count from ${sql(table)}`;
    return row?.count ?? 0;
  });
