import type { Side } from "@courtloom/core";
import { applyScore } from "../src/apply-score.ts";
import { foldErrorText, foldScore } from "../src/fold-score.ts";
import type { MatchFormat } from "../src/format.ts";
import type { ScoreBoard, ScoreSetup } from "../src/score-board.ts";
import type { ScoreEvent } from "../src/score-event.ts";

export const STANDARD: MatchFormat = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "same" },
};

export const format = (changes: Partial<MatchFormat> = {}): MatchFormat => ({ ...STANDARD, ...changes });

export const point = (winner: Side): ScoreEvent => ({ type: "point", winner });

/** "AAB" as points. */
export const points = (letters: string): ScoreEvent[] =>
  [...letters].map((letter) => point(letter === "A" ? "A" : "B"));

/** "AAB" as games won to love: each letter four points. */
export const games = (letters: string): ScoreEvent[] =>
  points([...letters].map((letter) => letter.repeat(4)).join(""));

/** Games won in turn, A first, up to n-n. */
export const level = (n: number): ScoreEvent[] => games("AB".repeat(n));

export function play(setup: ScoreSetup | MatchFormat, ...parts: (ScoreEvent | ScoreEvent[])[]): ScoreBoard {
  const full: ScoreSetup = "format" in setup ? setup : { format: setup, firstServer: "A" };
  const board = foldScore(full, parts.flat());
  if (!board.ok) throw new Error(foldErrorText(board.error));
  return board.value;
}

export function next(board: ScoreBoard, event: ScoreEvent): ScoreBoard {
  const result = applyScore(board, event);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

/** The error of an event that must be refused. */
export function refusal(board: ScoreBoard, event: ScoreEvent) {
  const result = applyScore(board, event);
  if (result.ok) throw new Error(`${event.type} was not refused`);
  return result.error;
}
