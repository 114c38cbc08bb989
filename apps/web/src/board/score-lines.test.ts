import type { TileScore } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { endWords, scoreLines, scoreSentence } from "./score-lines.ts";

const names = { A: "Noor V.", B: "Elsbeth K." };
const score = (more: Partial<TileScore> = {}): TileScore => ({
  sets: [[6, 4]],
  games: [3, 2],
  points: { A: "30", B: "15" },
  server: "A",
  tieBreak: false,
  matchTieBreak: false,
  endsDue: false,
  winner: null,
  status: "playing",
  ...more,
});

describe("score of a tile", () => {
  it("[BD1] gives each side its sets, games, points and whether it serves", () => {
    expect(scoreLines(score()).B).toEqual({
      sets: [{ no: 1, games: 4, tiebreak: null, won: false }],
      games: 2,
      points: "15",
      serves: false,
    });
    expect(scoreLines(score()).A.serves).toBe(true);
  });

  it("[BD1] gives tie-break points to the loser of the set only", () => {
    const lines = scoreLines(score({ sets: [[6, 7, 5]] }));
    expect(lines.A.sets).toEqual([{ no: 1, games: 6, tiebreak: 5, won: false }]);
    expect(lines.B.sets).toEqual([{ no: 1, games: 7, tiebreak: null, won: true }]);
  });

  it("[BD1] shows a match tie-break by its points alone", () => {
    const now = score({
      sets: [
        [6, 4],
        [4, 6],
      ],
      games: [0, 0],
      points: { A: "7", B: "6" },
      matchTieBreak: true,
    });
    expect(scoreLines(now).A).toMatchObject({ games: null, points: "7" });
    const done = scoreLines(
      score({
        sets: [
          [6, 4],
          [4, 6],
          [10, 8, "MTB"],
        ],
        status: "completed",
        winner: "A",
      }),
    );
    expect(done.A.sets.at(-1)).toEqual({ no: 3, games: 10, tiebreak: null, won: true });
    expect(done.B.sets.at(-1)).toEqual({ no: 3, games: 8, tiebreak: null, won: false });
  });

  it("[BD1] shows a match that is over by its sets, and by the games it was cut short at", () => {
    expect(scoreLines(score({ games: [0, 0], status: "completed", winner: "A" })).A).toMatchObject({
      games: null,
      points: null,
      serves: false,
    });
    expect(scoreLines(score({ status: "retired", winner: "B" })).A.games).toBe(3);
  });

  it("[BD1] says all of it in one sentence", () => {
    expect(scoreSentence(names, score())).toBe("Noor V. 6 3 30, Elsbeth K. 4 2 15, Noor V. serves");
    expect(scoreSentence(names, score({ games: [0, 0], status: "completed", winner: "A" }))).toBe(
      "Noor V. 6, Elsbeth K. 4",
    );
  });

  it("[BD4] says how a match ended", () => {
    expect(endWords(names, score())).toBeNull();
    expect(endWords(names, score({ status: "completed", winner: "A" }))).toBe("Noor V. won");
    expect(endWords(names, score({ status: "retired", winner: "B" }))).toBe(
      "Elsbeth K. won, Noor V. retired",
    );
    expect(endWords(names, score({ status: "walkover", winner: "A" }))).toBe("Noor V. won by walkover");
    expect(endWords(names, score({ status: "timeUp" }))).toBe("Drawn, time was up");
    expect(endWords(names, score({ status: "unplayed" }))).toBe("Not played");
  });
});
