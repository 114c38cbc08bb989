import { createDayStore, type DayStore, openDb } from "@courtloom/db";
import { freshDatabase } from "@courtloom/db/testing";
import { describeWatchStore } from "../../../packages/api/src/testing/watch-store-contract.ts";

const makeAcademy = async (days: DayStore, isDemo: boolean) => {
  const academy = { name: "Curlew Reach", timeZone: "Europe/Lisbon", language: "en", isDemo };
  const made = await days.setupAcademy({ ...academy, director: { displayName: "Maren H.", userId: null } });
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};

describeWatchStore("watch settings in the database", async () => {
  const database = await freshDatabase();
  const db = openDb(database.appUrl);
  const store = createDayStore(db);
  const { academyId, memberId } = await makeAcademy(store, false);
  const other = await makeAcademy(store, true);
  const addPlayer = async (playerId: string, own: boolean) => {
    const file = { hand: "right", birthYear: null, squad: null, level: null } as const;
    await store.addPlayer({ academyId, playerId, displayName: playerId, own, ...file });
  };
  await addPlayer("player-a", true);
  await addPlayer("player-b", true);
  await addPlayer("visitor", false);
  return {
    store,
    academyId,
    otherId: other.academyId,
    playerIds: ["player-a", "player-b"],
    visitorId: "visitor",
    memberId,
    memberName: "Maren H.",
    close: async () => {
      await db.close();
      await database.drop();
    },
  };
});
