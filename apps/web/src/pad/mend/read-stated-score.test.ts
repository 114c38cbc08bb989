import { describe, expect, it } from "vitest";
import { readStatedScore, type TypedScore } from "./read-stated-score.ts";

const typed = (changes: Partial<TypedScore> = {}): TypedScore => ({
  sets: "",
  games: { A: "", B: "" },
  points: { A: "", B: "" },
  server: "",
  missed: false,
  ...changes,
});

describe("a typed score", () => {
  it("[PD83] takes what was written and leaves the rest as it is", () => {
    expect(readStatedScore(typed({ points: { A: "2", B: "1" } }))).toEqual({
      ok: true,
      value: { kind: "ScoreStated", missed: false, score: { points: [2, 1] } },
    });
    expect(readStatedScore(typed({ sets: "6-4, 3–6", server: "B", missed: true }))).toEqual({
      ok: true,
      value: {
        kind: "ScoreStated",
        missed: true,
        score: {
          sets: [
            [6, 4],
            [3, 6],
          ],
          games: [0, 0],
          points: [0, 0],
          server: "B",
        },
      },
    });
  });

  it("[PD83] takes points as called, tie-breaks with their points, and a match tie-break", () => {
    const points = (A: string, B: string, isTieBreak = false) => {
      const read = readStatedScore(typed({ points: { A, B } }), isTieBreak);
      return read.ok ? read.value.score.points : read.error;
    };
    expect(points("15", "40")).toEqual([1, 3]);
    expect(points("ad", "40")).toEqual([4, 3]);
    expect(points("15", "15", true)).toEqual([15, 15]);
    expect(points("12", "13")).toEqual([12, 13]);
    expect(readStatedScore(typed({ sets: "6-7(5) 7–5 [10-8]" }))).toMatchObject({
      value: {
        score: {
          sets: [
            [6, 7, 5],
            [7, 5],
            [10, 8, "MTB"],
          ],
        },
      },
    });
  });

  it("[PD83] says what to write where it cannot be read", () => {
    const said = (changes: Partial<TypedScore>) => {
      const read = readStatedScore(typed(changes));
      return read.ok ? "" : read.error;
    };
    expect(said({})).toContain("Nothing is stated yet");
    expect(said({ sets: "6-4 x" })).toContain("“x” is no set");
    expect(said({ games: { A: "3", B: "" } })).toContain("Games: write a whole number for both");
    expect(said({ points: { A: "15.5", B: "0" } })).toContain("Points: write 0, 15, 30, 40 or Ad");
  });
});
