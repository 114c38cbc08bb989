import type { Entry, MatchOpened } from "@courtloom/match-log";
import { openedWith } from "@courtloom/match-log/testing";
import type { MatchFormat } from "@courtloom/tennis";
import type { AppendItem, OpenLane } from "../entry-store.ts";

export const FORMAT: MatchFormat = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "matchTiebreak", to: 10 },
};

/** The opening of an invented match between two of the academy's players. */
export const openingOf = (matchId: string): MatchOpened =>
  openedWith({
    matchId,
    format: FORMAT,
    players: {
      A: { playerId: "player-a", hand: "right", own: true },
      B: { playerId: "player-b", hand: "left", own: true },
    },
    coachingMode: "practice",
  });

/** Entry n of a lane; `salt` tells apart what else would be the same entry. */
export const entryOf = (laneId: string, n: number, salt = ""): Entry => ({
  v: 1,
  id: `${laneId}-${n}${salt}`,
  n,
  atMs: n * 20_000,
  wallMs: 1_780_000_000_000 + n * 20_000,
  body: {
    kind: "PointCharted",
    point: {
      winner: n % 3 === 0 ? "B" : "A",
      level: "key",
      seat: "behind",
      endOfA: "near",
      shots: [{ striker: "A", from: { right: 300, away: -1100 }, to: { right: -250, away: 900 + n } }],
    },
  },
});

export const item = (laneId: string, n: number, salt = ""): AppendItem => ({
  n,
  entry: entryOf(laneId, n, salt),
});

/** Items `from` to `to` of a lane. */
export const items = (laneId: string, from: number, to: number): readonly AppendItem[] =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => item(laneId, from + i));

export const laneOf = (academyId: string, matchId: string, laneId: string): OpenLane => ({
  academyId,
  matchId,
  laneId,
  chartist: `chartist of ${laneId}`,
  owner: { kind: "courtside", id: `session of ${laneId}` },
  level: "key",
});
