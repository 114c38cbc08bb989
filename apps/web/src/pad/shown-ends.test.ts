import { describe, expect, it } from "vitest";
import { matchToOpen } from "./match-to-open.ts";
import { parseSettings, USUAL_SETTINGS } from "./pad-settings.ts";
import { shortNames } from "./short-names.ts";
import { nearSide, shownEndOfA, sideAtFirstEnd } from "./shown-ends.ts";

describe("the ends as they are drawn", () => {
  it("[PD12] follow the log from behind and from the side", () => {
    expect(shownEndOfA("behind", "far", ["A"])).toBe("far");
    expect(shownEndOfA("behind", "left", ["A"])).toBe("near");
    expect(shownEndOfA("side", "far", ["A"])).toBe("right");
    expect(shownEndOfA("behind", undefined, ["A"])).toBeUndefined();
  });

  it("[PD12] keep the charted player near when that is wanted, whatever the log says", () => {
    expect(shownEndOfA("alwaysNear", "far", ["A"])).toBe("near");
    expect(shownEndOfA("alwaysNear", undefined, ["B"])).toBe("far");
    expect([nearSide(["B"]), nearSide([]), nearSide(["A", "B"])]).toEqual(["B", "A", "A"]);
    expect(sideAtFirstEnd("far")).toBe("B");
  });
});

describe("what a phone remembers", () => {
  it("[PD13] falls back to the usual for anything that it does not know", () => {
    expect(parseSettings(null)).toEqual(USUAL_SETTINGS);
    expect(parseSettings("not json")).toEqual(USUAL_SETTINGS);
    expect(parseSettings('{"theme":"sun","seat":"roof","name":7}')).toEqual({
      ...USUAL_SETTINGS,
      theme: "sun",
    });
  });
});

describe("names on buttons", () => {
  it("[PD13] are first names, or whole names when those are the same", () => {
    expect(shortNames({ A: "Noor V.", B: "Elsbeth K." })).toEqual({ A: "Noor", B: "Elsbeth" });
    expect(shortNames({ A: "Noor V.", B: "Noor S." })).toEqual({ A: "Noor V.", B: "Noor S." });
  });
});

describe("the match that opens by itself", () => {
  const match = (matchId: string, state: "playing" | "waiting" | "over") => ({
    matchId,
    names: { A: "Noor V.", B: "Elsbeth K." },
    own: { A: true, B: false },
    subjects: ["A" as const],
    state,
  });
  const on = (...matches: ReturnType<typeof match>[]) =>
    matchToOpen({ courtName: "Court 1", chartist: "Ioan P.", staff: false, matches })?.matchId;

  it("[PD14] is the one being played, else the only one to come, else none", () => {
    expect(on(match("a", "over"), match("b", "playing"), match("c", "waiting"))).toBe("b");
    expect(on(match("a", "over"), match("b", "waiting"))).toBe("b");
    expect(on(match("a", "waiting"), match("b", "waiting"))).toBeUndefined();
    expect(on(match("a", "over"))).toBeUndefined();
  });
});
