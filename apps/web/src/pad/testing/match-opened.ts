import type { MatchOpened } from "@courtloom/match-log";

/** A match of two sets of six as its log opens: Noor (A, charted) serves first. */
export const matchOpened: MatchOpened = {
  kind: "MatchOpened",
  matchId: "m1",
  format: {
    sets: 3,
    gamesPerSet: 6,
    tiebreakAt: 6,
    tiebreakTo: 7,
    noAd: false,
    finalSet: { kind: "same" },
  },
  firstServer: "A",
  players: {
    A: { playerId: "p1", hand: "right", own: true },
    B: { playerId: "p2", hand: "right", own: false },
  },
  subjects: ["A"],
  doubles: false,
  coachingMode: "practice",
  planVersion: null,
  fitVersion: null,
  watches: [],
};
