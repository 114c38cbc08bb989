import type { AlertLine, Tile } from "@courtloom/protocol";
import { boardTile } from "../board/board-tiles.ts";

const HOUR_MS = 3_600_000;

/** An alert of the own player on a court of the invented day, by the court's index from 0. */
export const alertOn = (i: number, more: Partial<AlertLine> = {}): AlertLine => ({
  key: { matchId: `match-${i + 1}`, playerId: `player-${i}-a`, rate: "lineMissed", version: 1, episode: 1 },
  courtId: `court-${i + 1}`,
  courtNo: i + 1,
  side: "A",
  name: boardTile(i, 0).names?.A ?? "",
  state: "standing",
  match: { x: 10, n: 14, offPlan: 8, low: 0.45, high: 0.88 },
  since: { x: 9, n: 12, set: 2, games: [2, 1] },
  usual: 0.3,
  source: "own",
  strength: 1,
  raisedMs: Date.parse("2026-06-20T11:20:00+01:00"),
  bothOwn: false,
  marks: { seen: [], useful: [] },
  ...more,
});

type Staff = NonNullable<Tile["staff"]>;

const playing = (i: number, nowMs: number, staff: Partial<Staff>): Tile => {
  const tile = boardTile(i, nowMs);
  const { alerts: _, ...rest } = tile.staff as Staff;
  // Heard for as long as the test takes: a word from ahead of the clock counts as heard just now.
  const heard = { matchId: `match-${i + 1}`, heardMs: nowMs + HOUR_MS, unsent: 0 };
  return {
    ...tile,
    state: "playing",
    score: boardTile(0, nowMs).score,
    own: { A: true, B: false },
    heard,
    staff: {
      ...rest,
      level: "key",
      bothOwn: false,
      figures: { A: boardTile(0, nowMs).staff?.figures.A ?? null, B: null },
      ...staff,
    },
  };
};

const withAlert = (i: number, nowMs: number, state: NonNullable<Staff["alerts"]>[number]["state"]): Tile => {
  const tile = playing(i, nowMs, { alerts: [{ side: "A", state, since: "2–1" }] });
  const figures = tile.staff?.figures.A;
  if (state !== "standing" || !tile.staff || !figures) return tile;
  const lineMissed = { x: 10, n: 14, low: 0.45, high: 0.88 };
  return { ...tile, staff: { ...tile.staff, figures: { A: { ...figures, lineMissed }, B: null } } };
};

const silent = (i: number, nowMs: number): Tile => {
  const tile = playing(i, nowMs, {});
  return { ...tile, heard: { matchId: `match-${i + 1}`, heardMs: nowMs - 94_000, unsent: 0 } };
};

const still = (i: number, nowMs: number, state: Tile["state"]): Tile => {
  const tile = playing(i, nowMs, {});
  return { ...tile, state, score: state === "waiting" ? null : tile.score };
};

/** Eight courts, one in each state: alert, easing, noticed, withdrawn, blind, suspended, waiting, and nothing of note. */
export const courtInEachState = (nowMs: number): readonly Tile[] => [
  withAlert(0, nowMs, "standing"),
  withAlert(1, nowMs, "easing"),
  withAlert(2, nowMs, "noticed"),
  withAlert(3, nowMs, "withdrawn"),
  silent(4, nowMs),
  still(5, nowMs, "suspended"),
  still(6, nowMs, "waiting"),
  playing(7, nowMs, {}),
];

/** The alerts of those courts. */
export const alertInEachState = (): readonly AlertLine[] => [
  alertOn(0),
  alertOn(1, {
    state: "easing",
    strength: 0.4,
    match: { x: 9, n: 27, offPlan: 3, low: 0.19, high: 0.52 },
    marks: {
      seen: [{ memberId: "m", name: "Maren H.", atMs: Date.parse("2026-06-20T11:32:00+01:00") }],
      useful: [],
    },
  }),
  alertOn(3, {
    state: "withdrawn",
    strength: 0,
    withdrawn: { atMs: Date.parse("2026-06-20T11:29:00+01:00"), chartist: "Ioan P." },
  }),
];
