import { assert } from "@courtloom/core";
import {
  type EntryBody,
  foldLog,
  type LoggedEntry,
  type MatchView,
  type PointCharted,
  type Shot,
} from "@courtloom/match-log";

/** For tests: a short match with line balls, kept balls, corrections and an entry that came too late. */

const id = (pos: number) => `00000000-0000-4000-8000-${String(pos).padStart(12, "0")}`;

const logged = (pos: number, body: EntryBody, laneId = "lane-1"): LoggedEntry => ({
  pos,
  laneId,
  epoch: laneId === "desk" ? 0 : 1,
  entry: { v: 1, id: id(pos), n: pos, atMs: pos * 25_000, wallMs: 1_781_950_000_000 + pos * 25_000, body },
});

const opened: EntryBody = {
  kind: "MatchOpened",
  matchId: "match-1",
  format: { sets: 3, gamesPerSet: 6, tiebreakAt: 6, tiebreakTo: 7, noAd: false, finalSet: { kind: "same" } },
  firstServer: "A",
  players: {
    A: { playerId: "p1", hand: "right", own: true },
    B: { playerId: "p2", hand: "left", own: false },
  },
  subjects: ["A"],
  doubles: false,
  coachingMode: "notKnown",
  usualRates: { A: { lineMissed: { mean: 0.3, low: 0.2, high: 0.4, a: 6, b: 14, source: "own" } }, B: {} },
  planVersion: null,
  fitVersion: null,
  watches: [],
};

/** A stroke of A from the near end: straight, across or to the middle, in or wide. */
const stroke = (goes: "line" | "cross" | "middle", missed: boolean, drift: number): Shot => {
  const right = { line: 300, cross: -300, middle: 20 }[goes] + drift;
  return {
    striker: "A",
    from: { right: 280 - drift, away: -1150 - drift },
    to: missed ? { right: right > 0 ? 520 : -520, away: 1000 } : { right, away: 950 + drift },
    kind: "groundstroke",
    ...(missed ? { result: "missed", miss: "wide" } : { result: "in" }),
  };
};

const reply = (drift: number): Shot => ({
  striker: "B",
  from: { right: 250, away: 1120 },
  to: { right: -200 + drift, away: -900 },
  kind: "groundstroke",
});

const point = (winner: "A" | "B", shots: readonly Shot[]): PointCharted => ({
  kind: "PointCharted",
  point: {
    winner,
    level: "every",
    seat: "behind",
    endOfA: "near",
    serve: { outcome: winner === "A" ? "firstIn" : "secondIn", faults: winner === "A" ? 0 : 1 },
    shots,
  },
});

const rallies: readonly EntryBody[] = Array.from({ length: 18 }, (_, i) => {
  const drift = ((i * 37) % 90) - 45;
  const missed = i % 3 === 0;
  const goes = i % 2 === 0 ? "line" : "cross";
  return point(missed ? "B" : "A", [
    stroke(i % 4 === 1 ? "middle" : "cross", false, drift),
    reply(drift),
    stroke(goes, missed, -drift),
  ]);
});

const bodies: readonly EntryBody[] = [
  ...rallies,
  { kind: "PlaySuspended", reason: "rain" },
  { kind: "PlayResumed" },
  { kind: "EntryVoided", target: id(5) },
  { kind: "EntryAmended", target: id(7), to: point("A", [stroke("line", false, 0)]) },
  { kind: "PlayResumed" },
  { kind: "PenaltyGiven", penalty: "warning", against: "B" },
];

export const courtTrial = (): { readonly entries: readonly LoggedEntry[]; readonly view: MatchView } => {
  const entries = [logged(1, opened, "desk"), ...bodies.map((body, i) => logged(i + 2, body))];
  const folded = foldLog(entries);
  assert(folded.ok, "the trial match folds");
  return { entries, view: folded.value };
};
