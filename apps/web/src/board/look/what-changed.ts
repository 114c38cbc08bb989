import { type ByPlayer, SIDES } from "@courtloom/core";
import type { Tile, TileProgress } from "@courtloom/protocol";
import type { FinishedSet } from "@courtloom/tennis";
import { endWords } from "../score-lines.ts";
import type { CourtMark } from "./court-mark.ts";

const NONE: TileProgress = { points: 0, breaks: { A: 0, B: 0 }, suspensions: 0 };
const ORDINALS = ["first", "second", "third", "fourth", "fifth"];

const pointWords = (count: number): string[] => {
  if (count === 0) return [];
  // Fewer points than before: some were taken back or are charted otherwise now.
  if (count < 0) return [`${-count} ${count === -1 ? "point" : "points"} fewer, corrected`];
  return [`${count} ${count === 1 ? "point" : "points"}`];
};

const breakWords = (then: TileProgress, now: TileProgress, names: ByPlayer<string>): string[] =>
  SIDES.flatMap((side) => {
    const count = now.breaks[side] - then.breaks[side];
    if (count <= 0) return [];
    return [`${count} ${count === 1 ? "break" : "breaks"} by ${names[side]}`];
  });

const setWords = (then: readonly FinishedSet[], now: readonly FinishedSet[]): string[] =>
  now.slice(then.length).map(([a, b], i) => `${ORDINALS[then.length + i] ?? "next"} set ${a}–${b}`);

const suspensionWords = (mark: CourtMark, then: TileProgress, tile: Tile, now: TileProgress): string[] => {
  const was = mark.state === "suspended";
  if (tile.state === "suspended") return was && now.suspensions <= then.suspensions ? [] : ["suspended"];
  if (was && tile.state === "playing") return ["play resumed"];
  return now.suspensions > then.suspensions ? ["suspended and resumed"] : [];
};

const chartistWords = (was: string | null, tile: Tile): string[] => {
  const now = tile.staff?.chartist ?? null;
  return now === null || now === was ? [] : [`${now} charts`];
};

const endedWords = (mark: CourtMark, tile: Tile): string[] => {
  if (tile.state !== "over" || mark.state === "over" || !tile.names || !tile.score) return [];
  const words = endWords(tile.names, tile.score);
  return words === null ? [] : [words];
};

/** What has happened in a match since it was at `mark`; the mark is of the same match, or of none. */
const withinMatch = (mark: CourtMark, tile: Tile, names: ByPlayer<string>): string[] => {
  const then = mark.progress ?? NONE;
  const now = tile.staff?.progress ?? then;
  return [
    ...pointWords(now.points - then.points),
    ...breakWords(then, now, names),
    ...setWords(mark.sets, tile.score?.sets ?? []),
    ...suspensionWords(mark, then, tile, now),
    ...endedWords(mark, tile),
    ...chartistWords(mark.chartist, tile),
  ];
};

/**
 * What changed on a court since it was marked, in short words and in the order of their weight; empty when
 * nothing did. Pure. Another match on the court is told as such, with what has happened in it. SPEC rule BD45.
 */
export const whatChanged = (mark: CourtMark | undefined, tile: Tile): readonly string[] => {
  if (!mark) return ["new on the board"];
  if (tile.matchId === mark.matchId) return tile.names ? withinMatch(mark, tile, tile.names) : [];
  if (tile.matchId === null || !tile.names) return ["no match any more"];
  const fresh: CourtMark = {
    matchId: tile.matchId,
    state: "waiting",
    sets: [],
    progress: null,
    chartist: null,
  };
  return [`now ${tile.names.A} – ${tile.names.B}`, ...withinMatch(fresh, tile, tile.names)];
};
