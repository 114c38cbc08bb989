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

  it("[PD83] says what to write where it cannot be read", () => {
    const said = (changes: Partial<TypedScore>) => {
      const read = readStatedScore(typed(changes));
      return read.ok ? "" : read.error;
    };
    expect(said({})).toContain("Nothing is stated yet");
    expect(said({ sets: "6-4 x" })).toContain("“x” is no set");
    expect(said({ games: { A: "3", B: "" } })).toContain("Games: write a whole number for both");
    expect(said({ points: { A: "15.5", B: "0" } })).toContain("Points: write a whole number");
  });
});
