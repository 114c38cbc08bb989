import { applyScore, type ScoreState, startScore } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { changedPart, pointsOf, sayNextScore } from "./say-score.ts";

const names = { A: "Noor", B: "Elsbeth" };
const format = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "same" },
} as const;

/** Scores after each of the points, won by the sides named; the first is the score before any. */
const play = (winners: string): readonly ScoreState[] => {
  const started = startScore({ format, firstServer: "A" });
  if (!started.ok) throw new Error("the format is playable");
  let board = started.value;
  return [
    board.state,
    ...[...winners].map((winner) => {
      const applied = applyScore(board, { type: "point", winner: winner === "A" ? "A" : "B" });
      if (!applied.ok) throw new Error("the match goes on");
      board = applied.value;
      return board.state;
    }),
  ];
};
const lastTwo = (winners: string): readonly [ScoreState, ScoreState] => {
  const [before, after] = play(winners).slice(-2);
  if (!before || !after) throw new Error("at least one point");
  return [before, after];
};
const say = (winners: string) => {
  const [before, after] = lastTwo(winners);
  return sayNextScore(before, after, names);
};

describe("the score as Done says it", () => {
  it.each([
    ["A", "15–0, next from the left"],
    ["AB", "15–15, next from the right"],
    ["AAABBB", "Deuce, next from the right"],
    ["AAABBBA", "Advantage Noor, next from the left"],
    ["AAABBBB", "Advantage Elsbeth, next from the left"],
    ["AAAA", "Game Noor, 1–0"],
    ["BBBB", "Game Elsbeth, 1–0"],
    ["AAAA".repeat(6), "Set Noor, 6–0"],
    ["AAAA".repeat(12), "Match Noor, 6–0 6–0"],
  ])("[PD9] after %s is %s", (winners, said) => {
    expect(say(winners)).toBe(said);
  });

  it("[PD9] names a set that was won in a tie-break by its games and the loser's points", () => {
    const even = `${"AAAABBBB".repeat(6)}`;
    expect(say(`${even}AAABAAAA`)).toBe("Set Noor, 7–6(1)");
  });
});

describe("what a point changed", () => {
  it("[PD10] is one number: the biggest that did", () => {
    expect(changedPart(...lastTwo("A"))).toEqual({ part: "points", side: "A" });
    expect(changedPart(...lastTwo("AAAA"))).toEqual({ part: "games", side: "A" });
    expect(changedPart(...lastTwo("BBBB".repeat(6)))).toEqual({ part: "sets", side: "B" });
  });

  it("[PD10] is the advantage that went when a game comes back to deuce", () => {
    const [before, after] = lastTwo("AAABBBAB");
    expect([pointsOf(before, "A"), pointsOf(after, "A")]).toEqual(["Ad", "40"]);
    expect(changedPart(before, after)).toEqual({ part: "points", side: "A" });
  });
});
