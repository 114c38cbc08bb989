import type { Side } from "@courtloom/core";
import { applyScore, type MatchFormat, type ScoreBoard, startScore } from "@courtloom/tennis";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nextChangeOf } from "./tile-ends.ts";

const THREE_SETS: MatchFormat = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "same" },
};

const begin = (format: MatchFormat): ScoreBoard => {
  const board = startScore({ format, firstServer: "A" });
  if (!board.ok) throw new Error("the format is not one");
  return board.value;
};
const play = (board: ScoreBoard, winners: string): ScoreBoard =>
  [...winners].reduce((at, letter) => {
    const side = letter.toUpperCase() as Side;
    // A small letter is a point, a capital one a whole game.
    const event =
      letter === side
        ? ({ type: "gamePenalty", against: side === "A" ? "B" : "A" } as const)
        : ({ type: "point", winner: side } as const);
    const next = applyScore(at, event);
    if (!next.ok) throw new Error(`the score cannot take ${letter}`);
    return next.value;
  }, board);
const nextAt = (winners: string, format = THREE_SETS) => nextChangeOf(play(begin(format), winners));

describe("how close a court is to a change of ends", () => {
  it.each([
    ["", "game"],
    ["A", "gameAndOne"],
    ["AB", "game"],
    ["ABABABABA", "gameAndOne"],
    ["ABABABABAAB", "gameAndOne"],
    ["ABABABABABA", "later"],
    ["AAAAA", "gameAndOne"],
  ])("[LV50] after the games %j ends change after: %s", (games, kind) => {
    expect(nextAt(games)).toEqual({ kind });
  });

  it.each([
    ["", 6],
    ["aab", 3],
    ["aaabb", 1],
    ["aaabbb", 6],
    ["aaabbbaba", 3],
  ])("[LV50] after the points %j of a tie-break ends change in %d points", (points, count) => {
    expect(nextAt(`ABABABABABAB${points}`)).toEqual({ kind: "points", points: count });
  });

  it("[LV50] knows formats that change otherwise, and the last game of all", () => {
    expect(nextAt("AB", { ...THREE_SETS, ends: "setEnds" })).toEqual({ kind: "set" });
    expect(nextAt("ABABABABABAB", { ...THREE_SETS, tbEnds: "none" })).toEqual({ kind: "tieBreak" });
    expect(nextAt("ABABABABABABa", { ...THREE_SETS, tbEnds: "coman" })).toEqual({
      kind: "points",
      points: 4,
    });
    const oneTieBreak: MatchFormat = { ...THREE_SETS, sets: 1, tieBreakOnly: { to: 7 }, tbEnds: "none" };
    expect(nextAt("aaa", oneTieBreak)).toBeUndefined();
    expect(nextAt("AAAAAAAAAAAA")).toBeUndefined();
  });

  it("[LV50] holds in whatever way a match goes on", () => {
    const points = fc.array(fc.constantFrom("a", "b"), { minLength: 40, maxLength: 300 });
    fc.assert(
      fc.property(points, (winners) => {
        let board = begin(THREE_SETS);
        let expected = nextChangeOf(board);
        for (const winner of winners) {
          if (board.state.over) return;
          const next = play(board, winner);
          const isGame = next.standing.gamesPlayed > board.standing.gamesPlayed;
          if (!next.state.over && expected?.kind === "game") expect(next.state.endsDue).toBe(isGame);
          if (expected?.kind === "gameAndOne" || expected?.kind === "later")
            expect(next.state.endsDue).toBe(false);
          if (expected?.kind === "points" && !isGame) expect(next.state.endsDue).toBe(expected.points === 1);
          board = next;
          expected = nextChangeOf(board);
        }
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });
});
