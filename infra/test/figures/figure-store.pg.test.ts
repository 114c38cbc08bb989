import { createDayStore, createPostgresEntryStore, openDb } from "@courtloom/db";
import { freshDatabase } from "@courtloom/db/testing";
import { openedWith, pointTo, THREE_SETS } from "@courtloom/match-log/testing";
import { describeFigureStore } from "../../../packages/api/src/testing/figure-store-contract.ts";

describeFigureStore("charted matches in the database", async () => {
  const database = await freshDatabase();
  const db = openDb(database.appUrl);
  const days = createDayStore(db);
  const entries = createPostgresEntryStore(db, { log: () => undefined });
  const makeAcademy = async (isDemo: boolean): Promise<string> => {
    const academy = { name: "Curlew Reach", timeZone: "Europe/Lisbon", language: "en", isDemo };
    const director = { displayName: "Maren H.", userId: null };
    const made = await days.setupAcademy({ ...academy, director });
    if (!made.ok) throw new Error(made.error.code);
    return made.value.academyId;
  };
  const academyId = await makeAcademy(false);
  const otherId = await makeAcademy(true);
  const file = { academyId, hand: "right", birthYear: null, squad: null, level: null } as const;
  await days.addPlayer({ ...file, playerId: "player-a", displayName: "Noor V.", own: true });
  await days.addPlayer({ ...file, playerId: "visitor", displayName: "Visitor red", own: false });

  const chart = async (matchId: string) => {
    await entries.openMatch({ academyId, matchId, opened: openedWith({ matchId }) });
    const owner = { kind: "courtside", id: "session" } as const;
    const lane = { academyId, matchId, laneId: `lane of ${matchId}`, chartist: "Dana H." };
    await entries.openLane({ ...lane, owner, level: "key" });
    const items = [1, 2].map((n) => {
      const entry = { v: 1, id: `${matchId}-${n}`, n, atMs: n, wallMs: n, body: pointTo("A") } as const;
      return { n, entry };
    });
    const { laneId } = lane;
    const appended = await entries.append({ academyId, matchId, laneId, items });
    if (!appended.ok) throw new Error(appended.error.code);
    const read = await entries.read({ academyId, matchId, after: 0, limit: 10 });
    if (!read.ok) throw new Error(read.error.code);
    return read.value.entries;
  };
  return {
    store: days,
    addChoiceFit: days.addChoiceFit,
    academyId,
    otherId,
    playerId: "player-a",
    opponent: { playerId: "visitor", displayName: "Visitor red" },
    put: async ({ matchId, playedOn, surface, daySurface, side, tallied }) => {
      const day = daySurface
        ? await days.createDay({
            academyId,
            name: "Spring day",
            date: playedOn,
            surface: daySurface,
            courts: [],
          })
        : undefined;
      const added = await days.addMatch({
        academyId,
        matchId,
        dayId: day?.dayId ?? null,
        courtId: null,
        playedOn,
        playerIds: side === "A" ? { A: "player-a", B: "visitor" } : { A: "visitor", B: "player-a" },
        format: THREE_SETS,
        ...(surface ? { surface } : {}),
      });
      if (!added.ok) throw new Error(added.error.code);
      const tally = { version: 2, levels: {} };
      if (tallied) await days.writeTally({ academyId, matchId, playerId: "player-a", version: "2", tally });
      return chart(matchId);
    },
    close: async () => {
      await db.close();
      await database.drop();
    },
  };
});
