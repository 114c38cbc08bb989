import { describe, expect, it } from "vitest";
import { courtTrial } from "./court-trial.ts";
import { tileScoreOf } from "./tile-score.ts";

describe("score of the court page", () => {
  const { score } = courtTrial().view;

  it("[BD1] calls points as a board does", () => {
    expect(tileScoreOf({ ...score, points: [2, 1], over: false, tieBreak: false }).points).toEqual({
      A: "30",
      B: "15",
    });
    expect(tileScoreOf({ ...score, points: [3, 3], tieBreak: false }).points).toEqual({ A: "40", B: "40" });
    expect(tileScoreOf({ ...score, points: [3, 4], tieBreak: false }).points).toEqual({ A: "40", B: "Ad" });
    expect(tileScoreOf({ ...score, points: [7, 6], tieBreak: true }).points).toEqual({ A: "7", B: "6" });
  });
});
