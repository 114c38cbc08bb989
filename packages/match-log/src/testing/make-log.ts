import type { Side } from "@courtloom/core";
import type { MatchFormat } from "@courtloom/tennis";
import { DESK_LANE, type EntryBody, type LoggedEntry } from "../entry.ts";
import type { MatchOpened } from "../opened.ts";
import type { Point } from "../point.ts";

export const THREE_SETS: MatchFormat = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "same" },
};

export const openedWith = (changes: Partial<MatchOpened> = {}): MatchOpened => ({
  kind: "MatchOpened",
  matchId: "match-1",
  format: THREE_SETS,
  firstServer: "A",
  players: {
    A: { playerId: "noor", hand: "right", own: true },
    B: { playerId: "elsbeth", hand: "left", own: false },
  },
  subjects: ["A"],
  doubles: false,
  coachingMode: "notKnown",
  planVersion: null,
  fitVersion: null,
  watches: [],
  ...changes,
});

/** A score-only point, or one with shots. */
export const pointTo = (winner: Side, changes: Partial<Point> = {}): EntryBody => ({
  kind: "PointCharted",
  point: { winner, level: "score", seat: "behind", endOfA: "near", shots: [], ...changes },
});

/** Id of the entry at `pos` of a made log. */
export const idAt = (pos: number): string => `00000000-0000-4000-8000-${String(pos).padStart(12, "0")}`;

const logged = (pos: number, body: EntryBody, laneId: string, epoch: number): LoggedEntry => ({
  pos,
  laneId,
  epoch,
  entry: { v: 1, id: idAt(pos), n: pos, atMs: pos * 1000, wallMs: 1_790_000_000_000 + pos * 1000, body },
});

/** A log of one lane: the opening at pos 1, then the bodies in order. */
export const makeLog = (bodies: readonly EntryBody[], opened: MatchOpened = openedWith()): LoggedEntry[] => [
  logged(1, opened, DESK_LANE, 0),
  ...bodies.map((body, i) => logged(i + 2, body, "lane-1", 1)),
];

/** Points as a string of A and B. */
export const pointsOf = (letters: string): EntryBody[] =>
  [...letters].map((letter) => pointTo(letter === "A" ? "A" : "B"));
