import type { ScoreState } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { tileScoreOf } from "./tile-score.ts";

const state: ScoreState = {
  sets: [[6, 4]],
  setsWon: [1, 0],
  games: [2, 1],
  points: [0, 0],
  call: "",
  server: "A",
  side: "deuce",
  tieBreak: false,
  matchTieBreak: false,
  endsDue: false,
  changesOfEnds: 0,
  pause: null,
  over: false,
  winner: null,
  status: "playing",
};

describe("the score on a tile", () => {
  it.each([
    [[0, 0], "0", "0"],
    [[1, 3], "15", "40"],
    [[3, 3], "40", "40"],
    [[4, 3], "Ad", "40"],
    [[6, 7], "40", "Ad"],
    [[7, 7], "40", "40"],
  ] as const)("[LV9] calls %j as %s and %s", (points, a, b) => {
    expect(tileScoreOf({ ...state, points }).points).toEqual({ A: a, B: b });
  });

  it("[LV9] counts a tie-break in numbers", () => {
    const score = tileScoreOf({ ...state, points: [10, 11], tieBreak: true, matchTieBreak: true });
    expect(score).toMatchObject({ points: { A: "10", B: "11" }, tieBreak: true, matchTieBreak: true });
  });
});
