import type { Fact } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { factWords } from "../../../match-words/fact-words.ts";
import { entryWords } from "./entry-words.ts";

const names = { A: "Noor V.", B: "Elsbeth K." };

describe("entries in words", () => {
  const cases: readonly (readonly [Fact, string])[] = [
    [{ kind: "PointReplayed" }, "The point was replayed"],
    [{ kind: "PenaltyGiven", penalty: "warning", against: "A" }, "Warning to Noor V."],
    [{ kind: "PenaltyGiven", penalty: "game", against: "B" }, "Penalty, a game against Elsbeth K."],
    [
      { kind: "ScoreStated", score: { games: [3, 2] }, missed: true },
      "The score was stated, points were missed",
    ],
    [{ kind: "ServerStated", to: "B", slip: "chartist" }, "Elsbeth K. serves, the chartist's slip"],
    [
      { kind: "EndsStated", endOfA: "far", since: "x" },
      "Ends put right: Noor V. is far, from an earlier entry on",
    ],
    [{ kind: "LevelChanged", level: "key" }, "Charting key balls from here"],
    [{ kind: "SubjectsChanged", subjects: ["A", "B"] }, "Charting Noor V. and Elsbeth K. from here"],
    [{ kind: "SubjectsChanged", subjects: [] }, "Nobody's choices are charted from here"],
    [{ kind: "PlaySuspended", reason: "rain" }, "Play was suspended: rain"],
    [{ kind: "MatchEnded", how: { type: "retired", side: "B" } }, "Elsbeth K. retired"],
    [{ kind: "MatchEnded", how: { type: "walkover", absent: "A" } }, "Walkover for Elsbeth K."],
  ];
  it.each(cases)("[BD13] says %j", (fact, words) => {
    expect(factWords(names, fact)).toBe(words);
  });

  it("[BD13] says what a correction is about", () => {
    expect(entryWords(names, { kind: "EntryRestored", target: "x" }, "entry 4")).toBe("Put back entry 4");
    expect(entryWords(names, { kind: "MatchSealed" }, "")).toBe("The match was closed");
  });
});
