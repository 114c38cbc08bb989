import type { Tile, TileFigures, TileScore } from "@courtloom/protocol";

const FIRST = [
  "Noor V.",
  "Kaito L.",
  "Anahera P.",
  "Tomasz B.",
  "Leocadia P.",
  "Yusuf A.",
  "Solveig T.",
  "Mirembe O.",
];
const SECOND = [
  "Elsbeth K.",
  "Bastian R.",
  "Jun D.",
  "Idris C.",
  "Wanjiru M.",
  "Pell O.",
  "Ottoline G.",
  "Signe F.",
];
const CHARTISTS = ["Ioan P.", "Dana H.", "Rosa T.", "Tobias A."];
const LEVELS = ["key", "every", "key", "score"] as const;

const at = <T>(list: readonly T[], index: number): T => {
  const item = list[index % list.length];
  if (item === undefined) throw new Error("the list is empty");
  return item;
};

const figures = (i: number): TileFigures => ({
  lineMissed: { x: 2 + (i % 5), n: 9 + (i % 7), low: 0.12, high: 0.62 },
  lineShare: { x: 9 + (i % 7), n: 31 + i },
  usualLineMissed: { mean: 0.3, low: 0.18, high: 0.42, a: 6, b: 14, source: "own" },
  planKept: { x: 14, n: 19 + (i % 4), low: 0.51, high: 0.88 },
});

const score = (i: number): TileScore => ({
  sets:
    i % 3 === 0
      ? []
      : i % 3 === 1
        ? [[6, 4]]
        : [
            [6, 7, 5],
            [6, 3],
          ],
  games: [i % 6, (i + 2) % 6],
  points: { A: at(["0", "15", "30", "40"], i), B: at(["0", "15", "30", "40"], i + 1) },
  server: i % 2 === 0 ? "A" : "B",
  tieBreak: false,
  matchTieBreak: false,
  endsDue: false,
  winner: null,
  status: "playing",
});

const stateOf = (i: number): Tile["state"] =>
  i % 8 === 6 ? "waiting" : i % 8 === 7 ? "suspended" : "playing";

const staffOf = (i: number): NonNullable<Tile["staff"]> => ({
  chartist: at(CHARTISTS, i),
  level: at(LEVELS, i),
  coachingMode: i % 3 === 0 ? "practice" : "notKnown",
  bothOwn: i % 8 === 3,
  setAsideCount: i % 8 === 5 ? 1 : 0,
  figures: { A: figures(i), B: i % 8 === 3 ? figures(i + 1) : null },
  playerIds: { A: `player-${i}-a`, B: `player-${i}-b` },
  ends: i % 4 === 0 ? { next: { kind: "game" } } : { next: { kind: "points", points: 3 } },
  progress: { points: 40 + i, breaks: { A: 1, B: 0 }, suspensions: 0 },
  ...(i % 8 === 1 && i < 24 ? { alerts: [{ side: "A", state: "standing", since: "2–1" }] } : {}),
  ...(i % 8 === 4 && i < 24 ? { alerts: [{ side: "A", state: "easing", since: "5–4" }] } : {}),
});

/** One court of an invented day, by its index from 0: courts in play, two alerts, a silent phone, waiting and suspended ones. */
export const boardTile = (i: number, nowMs: number): Tile => ({
  courtId: `court-${i + 1}`,
  courtNo: i + 1,
  courtName: `Court ${i + 1}`,
  state: stateOf(i),
  matchId: `match-${i + 1}`,
  pos: 40,
  names: { A: at(FIRST, i), B: at(SECOND, i) },
  own: { A: true, B: i % 8 === 3 },
  score: stateOf(i) === "waiting" ? null : score(i),
  next: null,
  heard: { matchId: `match-${i + 1}`, heardMs: nowMs - (i % 8 === 2 ? 94_000 : 2_000), unsent: 0 },
  staff: staffOf(i),
});

/** The same court as a public wall gets it. */
export const publicTile = (i: number, nowMs: number): Tile => {
  const { staff: _, ...rest } = boardTile(i, nowMs);
  return rest;
};
