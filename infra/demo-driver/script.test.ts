import { describe, expect, it } from "vitest";
import { laneIdOf, type ScriptedMatch, scriptOf } from "./script.ts";

const match: ScriptedMatch = {
  matchId: "a-match",
  format: { sets: 1, gamesPerSet: 6, tiebreakAt: 6, tiebreakTo: 7, noAd: false, finalSet: { kind: "same" } },
  firstServer: "A",
  names: { A: "Noor V.", B: "Visitor red" },
};

describe("what a simulated phone charts", () => {
  it("[DM7] is the same each time it is asked for, so that a driver can go on from the server's cursor", () => {
    expect(scriptOf(match, [])).toEqual(scriptOf(match, []));
    expect(laneIdOf("a-match")).toBe(laneIdOf("a-match"));
    expect(laneIdOf("a-match")).not.toBe(laneIdOf("another-match"));
  });

  it("[DM7] differs from match to match", () => {
    expect(scriptOf({ ...match, matchId: "another-match" }, [])).not.toEqual(scriptOf(match, []));
  });

  it("[DM7] puts rain between two points, and the same points around it", () => {
    const dry = scriptOf(match, []);
    const wet = scriptOf(match, [{ type: "rain", at: 10, ms: 60_000 }]);
    expect(wet.map((step) => step.body.kind).slice(10, 12)).toEqual(["PlaySuspended", "PlayResumed"]);
    expect(wet[11]?.waitMs).toBe(60_000);
    expect([...wet.slice(0, 10), ...wet.slice(12)]).toEqual(dry);
  });
});
