import { randomUUID } from "node:crypto";
import { byPlayer, err, ok } from "@courtloom/core";
import type { Surface } from "@courtloom/tennis";
import type { AcademyRow, ApiStore, CourtRow, DayRow, MatchRow, PlayerFile } from "../api-store.ts";
import type { JudgedAlerts } from "../watch/watch-store.ts";
import { createMemoryFigures } from "./memory-figures.ts";
import { createMemoryLog } from "./memory-log.ts";
import { createMemoryPlans } from "./memory-plans.ts";
import { createMemoryWatches } from "./memory-watches.ts";

type InAcademy<T> = T & { readonly academyId: string };

interface Rows {
  academies: AcademyRow[];
  days: InAcademy<DayRow & { courts: CourtRow[] }>[];
  players: InAcademy<PlayerFile>[];
  matches: InAcademy<MatchRow & { readonly surface?: Surface }>[];
  tallies: InAcademy<{ readonly matchId: string; readonly playerId: string; readonly tally: unknown }>[];
  judged: InAcademy<JudgedAlerts>[];
  audit: { action: string; subject: string | undefined }[];
}

const pick = <T extends { academyId: string }>(rows: readonly T[], academyId: string): T[] =>
  rows.filter((row) => row.academyId === academyId);

/** An academy's rows in memory, for tests of the procedures. `writes` counts every call that changes something. */
export const createMemoryStore = () => {
  const rows: Rows = {
    academies: [],
    days: [],
    players: [],
    matches: [],
    tallies: [],
    judged: [],
    audit: [],
  };
  let writes = 0;
  const wrote = <T>(value: T): T => {
    writes += 1;
    return value;
  };
  const dayOf = (academyId: string, dayId: string) =>
    pick(rows.days, academyId).find((day) => day.dayId === dayId);
  const fileOf = (academyId: string, playerId: string) =>
    pick(rows.players, academyId).find((player) => player.playerId === playerId);

  const surroundings = {
    isOwnPlayer: (academyId: string, playerId: string) => fileOf(academyId, playerId)?.own ?? false,
    nameOf: () => "Maren H.",
    wrote: () => {
      wrote(undefined);
    },
    judged: (academyId: string) => pick(rows.judged, academyId),
  };
  const plans = createMemoryPlans(surroundings);
  const { log, ...logs } = createMemoryLog(
    (academyId, matchId) => pick(rows.matches, academyId).some((match) => match.matchId === matchId),
    surroundings.wrote,
  );
  const figures = createMemoryFigures({
    tallied: () => rows.tallies,
    matchOf: (academyId, matchId) => pick(rows.matches, academyId).find((match) => match.matchId === matchId),
    logOf: logs.logOf,
    lanesOf: (matchId) => logs.lanes.filter((lane) => lane.matchId === matchId),
  });
  const store: ApiStore = {
    ...plans.store,
    ...createMemoryWatches(surroundings),
    ...figures.store,
    hasAcademy: async () => rows.academies.some((academy) => !academy.isDemo),
    demoAcademyId: async () => rows.academies.find((academy) => academy.isDemo)?.academyId,
    setupAcademy: async ({ director: _, ...academy }) => {
      if (rows.academies.some((there) => there.isDemo === academy.isDemo))
        return err({ code: "already_set_up" });
      const academyId = randomUUID();
      rows.academies.push({ academyId, ...academy });
      return wrote(ok({ academyId, memberId: randomUUID() }));
    },
    academy: async ({ academyId }) => pick(rows.academies, academyId)[0],
    listDays: async ({ academyId }) => pick(rows.days, academyId),
    createDay: async ({ academyId, name, date, courts }) => {
      const made = courts.map((court, i) => ({ courtId: randomUUID(), no: i + 1, name: court.name }));
      const dayId = randomUUID();
      rows.days.push({ academyId, dayId, name, date, courts: made });
      return wrote({ dayId, courtIds: made.map((court) => court.courtId) });
    },
    dayBoard: async ({ academyId, dayId }) => {
      const day = dayOf(academyId, dayId);
      const academy = pick(rows.academies, academyId)[0];
      if (!day || !academy) return undefined;
      return { day, academyName: academy.name, timeZone: academy.timeZone, courts: day.courts };
    },
    dayMatches: async ({ academyId, dayId }) =>
      pick(rows.matches, academyId).filter((match) => match.dayId === dayId),
    addMatch: async ({ academyId, playerIds, partnerIds, ...match }) => {
      const players = byPlayer((side) => fileOf(academyId, playerIds[side]));
      const { A, B } = players;
      if (!A || !B) return err({ code: "unknown_player" });
      const partners = byPlayer((side) => fileOf(academyId, partnerIds?.[side] ?? "") ?? null);
      const matchId = randomUUID();
      rows.matches.push({
        academyId,
        matchId,
        dayId: match.dayId,
        courtId: match.courtId,
        orderNo: rows.matches.length + 1,
        title: match.title ?? "",
        playedOn: "2026-05-30",
        players: { A, B },
        partners,
        format: match.format,
        firstServer: match.firstServer ?? null,
        doubles: partnerIds !== undefined,
        coachingMode: match.coachingMode ?? "notKnown",
        subjects: match.subjects ?? [],
        ...(match.surface ? { surface: match.surface } : {}),
        stage: "waiting",
      });
      return wrote(ok({ matchId }));
    },
    changeMatch: async ({ academyId, matchId, change }) => {
      const at = rows.matches.findIndex((m) => m.academyId === academyId && m.matchId === matchId);
      const match = rows.matches[at];
      if (!match) return err({ code: "unknown_match" });
      rows.matches[at] = { ...match, ...change };
      return wrote(ok(rows.matches[at]));
    },
    matchCard: async ({ academyId, matchId }) =>
      pick(rows.matches, academyId).find((match) => match.matchId === matchId),
    addPlayer: async ({ academyId, ...file }) => {
      const playerId = randomUUID();
      rows.players.push({ academyId, playerId, ...file });
      return wrote({ playerId });
    },
    listPlayers: async ({ academyId, ownOnly }) =>
      pick(rows.players, academyId).filter((player) => !ownOnly || player.own),
    academyTallies: async ({ academyId }) => pick(rows.tallies, academyId),
    writeAudit: async ({ action, subject }) => {
      rows.audit.push({ action, subject });
      wrote(undefined);
    },
  };
  return {
    store,
    log,
    addChoiceFit: figures.addChoiceFit,
    logs,
    rows,
    plans: plans.rows,
    writeCount: () => writes,
  };
};

export type MemoryStore = ReturnType<typeof createMemoryStore>;
