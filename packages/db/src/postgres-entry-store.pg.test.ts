import { entryStoreContract } from "./entry-store.contract.ts";
import { openDb } from "./open-db.ts";
import { createPostgresEntryStore } from "./postgres-entry-store.ts";
import { freshDatabase } from "./testing/fresh-database.ts";
import { seedAcademy, seedMatch } from "./testing/seed-academy.ts";
import { seedHandOver } from "./testing/seed-hand-over.ts";

entryStoreContract("in Postgres", async () => {
  const database = await freshDatabase();
  const db = openDb(database.appUrl);
  await seedAcademy(db, "curlew");
  const fail = (line: string): never => {
    throw new Error(line);
  };
  return {
    store: createPostgresEntryStore(db, { log: fail }),
    addMatch: ({ academyId, matchId }) => seedMatch(db, academyId, matchId),
    addHandOver: (handed) => seedHandOver(db, handed),
    close: async () => {
      await db.close();
      await database.drop();
    },
  };
});
