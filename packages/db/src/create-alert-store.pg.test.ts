import { alertStoreContract } from "./alert-store.contract.ts";
import { createAlertStore } from "./create-alert-store.ts";
import { createDayStore } from "./create-day-store.ts";
import { openDb } from "./open-db.ts";
import { freshDatabase } from "./testing/fresh-database.ts";
import { FORMAT } from "./testing/log-fixtures.ts";
import { seedAcademy } from "./testing/seed-academy.ts";

alertStoreContract("in Postgres", async () => {
  const database = await freshDatabase();
  const db = openDb(database.appUrl);
  const days = createDayStore(db);
  await seedAcademy(db, "curlew");
  return {
    store: createAlertStore(db),
    addMatch: async ({ academyId, matchId }) => {
      const court = [{ name: "Court 1" }];
      const { dayId, courtIds } = await days.createDay({
        ...{ academyId, name: "Tide Cup", date: "2026-05-30", courts: court },
      });
      const added = await days.addMatch({
        ...{ academyId, matchId, dayId, courtId: courtIds[0] ?? null, format: FORMAT },
        playerIds: { A: "player-a", B: "player-b" },
      });
      if (!added.ok) throw new Error(added.error.code);
      return dayId;
    },
    close: async () => {
      await db.close();
      await database.drop();
    },
  };
});
