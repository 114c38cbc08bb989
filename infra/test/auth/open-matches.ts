import { randomUUID } from "node:crypto";
import { createDayStore, createPostgresEntryStore, type Db, type LaneOwner } from "@courtloom/db";
import { openedWith } from "@courtloom/match-log/testing";
import type { MadeAcademy } from "./open-auth-database.ts";

interface Lead {
  readonly academyId: string;
  readonly matchId: string;
  readonly laneId: string;
}

const FORMAT = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "matchTiebreak", to: 10 },
} as const;

const granted = <T>(result: { readonly ok: true; readonly value: T } | { readonly ok: false }): T => {
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result.value;
};

/** Matches that are charted, in the day's tables and the log. */
export const openMatches = (db: Db) => {
  const log = createPostgresEntryStore(db, {
    log: (line) => {
      throw new Error(line);
    },
  });
  const days = createDayStore(db);
  const addPlayers = async (academyId: string) => {
    const playerIds = { A: randomUUID(), B: randomUUID() };
    const file = { academyId, birthYear: 2012, squad: "Green", own: true, level: 3, hand: "right" } as const;
    await days.addPlayer({ ...file, playerId: playerIds.A, displayName: "Noor V." });
    await days.addPlayer({ ...file, playerId: playerIds.B, displayName: "Kaito L." });
    return playerIds;
  };
  const openLane = async (lane: Lead, owner: LaneOwner, chartist: string, takeOver?: string) => {
    granted(
      await log.openLane({ ...lane, owner, chartist, level: "every", ...(takeOver ? { takeOver } : {}) }),
    );
  };
  return {
    openMatch: async ({ academyId, dayId, courtId }: MadeAcademy, owner: LaneOwner): Promise<Lead> => {
      const matchId = randomUUID();
      const playerIds = await addPlayers(academyId);
      const at = { academyId, matchId, dayId, courtId, playedOn: "2026-05-30" };
      granted(await days.addMatch({ ...at, playerIds, format: FORMAT }));
      const hand = "right" as const;
      const players = {
        A: { playerId: playerIds.A, hand, own: true },
        B: { playerId: playerIds.B, hand, own: true },
      };
      const opened = openedWith({ matchId, format: FORMAT, players, coachingMode: "practice" });
      granted(await log.openMatch({ academyId, matchId, opened }));
      const lead = { academyId, matchId, laneId: randomUUID() };
      await openLane(lead, owner, "Dana H.");
      return lead;
    },
    takeOver: async (lead: Lead, owner: LaneOwner): Promise<string> => {
      const laneId = randomUUID();
      await openLane({ ...lead, laneId }, owner, "Rosa T.", lead.laneId);
      return laneId;
    },
  };
};
