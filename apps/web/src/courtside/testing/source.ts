import { FORMAT_PRESETS, type MatchRow, type PlayerFile } from "@courtloom/api";
import type { CourtsideSource } from "../list-matches.ts";

const id = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, "0")}`;

export const ids = {
  academy: id(1),
  day: id(2),
  court1: id(3),
  court2: id(4),
  open: id(5),
  waiting: id(6),
  elsewhere: id(7),
  finished: id(8),
} as const;

const player = (displayName: string, own: boolean): PlayerFile => ({
  playerId: displayName,
  displayName,
  hand: "right",
  birthYear: null,
  squad: null,
  own,
  level: null,
});

const match = (matchId: string, courtId: string, orderNo: number, stage: MatchRow["stage"]): MatchRow => ({
  matchId,
  dayId: ids.day,
  courtId,
  orderNo,
  title: "",
  playedOn: "2026-05-30",
  players: { A: player("Noor V.", true), B: player("Visitor red", false) },
  partners: { A: null, B: null },
  format: FORMAT_PRESETS.oneSet.format,
  firstServer: null,
  doubles: false,
  coachingMode: "notKnown",
  subjects: ["A"],
  stage,
});

const MATCHES = [
  match(ids.open, ids.court1, 1, "open"),
  match(ids.waiting, ids.court1, 2, "waiting"),
  match(ids.elsewhere, ids.court2, 1, "waiting"),
  match(ids.finished, ids.court2, 2, "sealed"),
];

/** A day with two courts; Rosa T. charts the match that is open. */
export const createSource = (): CourtsideSource => ({
  dayBoard: async ({ academyId, dayId }) =>
    academyId === ids.academy && dayId === ids.day
      ? {
          day: { dayId, name: "Spring day", date: "2026-05-30" },
          academyName: "Curlew Reach",
          timeZone: "Europe/Lisbon",
          courts: [
            { courtId: ids.court1, no: 1, name: "Court 1" },
            { courtId: ids.court2, no: 2, name: "Court 2" },
          ],
        }
      : undefined,
  dayMatches: async () => MATCHES,
  matchCard: async ({ matchId }) => MATCHES.find((each) => each.matchId === matchId),
  head: async ({ matchId }) => ({ chartist: matchId === ids.open ? "Rosa T." : null }),
});
