import type { WatchFile } from "@courtloom/api";
import { describe, expect, it } from "vitest";
import { chosenOf, draftOf, isSameChoice, problemOf, toggleRate } from "./watch-draft.ts";
import { choiceWords, falseAlarmWords, judgedWords, tooFewWords, usualWords } from "./watch-words.ts";

const none = { lineMissed: null, lineShare: null, keptMissed: null, lineOffPlan: null, passedUp: null };
const file: WatchFile = {
  academy: null,
  charted: { lineMissed: 62, lineShare: 0, keptMissed: 0, lineOffPlan: 0, passedUp: 0 },
  needed: 100,
  judged: {
    lineMissed: { x: 7, n: 22 },
    lineShare: { x: 0, n: 0 },
    keptMissed: { x: 10, n: 20 },
    lineOffPlan: { x: 1, n: 19 },
    passedUp: { x: 0, n: 0 },
  },
  players: [{ playerId: "noor", displayName: "Noor V.", setting: null, usual: none }],
};
const saved = { version: 1, savedBy: "maren", savedByName: "Maren H.", savedMs: 0 };
const quiet = { rates: ["lineMissed", "passedUp"], alpha: 0.1, quiet: true } as const;

describe("what staff found of alerts", () => {
  it("[WA28] is counted, and proposes to take a rate out below half of at least 20", () => {
    const words = (rate: keyof typeof file.judged) => judgedWords(file.judged[rate]);
    expect(words("lineMissed")).toBe(
      "Alerts called useful: 7 of 22. Fewer than half: think of taking this rate out.",
    );
    expect(words("keptMissed")).toBe("Alerts called useful: 10 of 20.");
    expect(words("lineOffPlan")).toBe("Alerts called useful: 1 of 19.");
    expect(words("passedUp")).toBeUndefined();
  });
});

describe("what is being chosen", () => {
  it("[WA23] begins with what holds, the default while nobody has chosen", () => {
    expect(draftOf(file, null)).toEqual({
      isOwn: true,
      choice: { rates: ["lineMissed"], alpha: 0.05, quiet: false },
    });
    const chosen = { ...file, academy: { ...saved, playerId: null, choice: quiet } };
    expect(draftOf(chosen, "noor")).toEqual({ isOwn: false, choice: quiet });
    expect(chosenOf(draftOf(chosen, "noor"))).toBeNull();
  });

  it("[WA23] takes rates in and out in their order, and tells what cannot be saved", () => {
    const draft = draftOf(file, null);
    const two = toggleRate(draft.choice, "passedUp");
    expect(two.rates).toEqual(["lineMissed", "passedUp"]);
    expect(toggleRate(two, "keptMissed").rates).toEqual(["lineMissed", "keptMissed", "passedUp"]);
    const nothing = toggleRate(draft.choice, "lineMissed");
    expect(problemOf({ isOwn: true, choice: nothing })).toBe("Nothing is watched. Choose 1 to 4 rates.");
    expect(problemOf({ isOwn: false, choice: nothing })).toBeUndefined();
    expect(isSameChoice(two, { ...two })).toBe(true);
    expect(isSameChoice(two, null)).toBe(false);
  });

  it("[WA23] says the false-alarm share in matches, from the share that was chosen", () => {
    expect(falseAlarmWords(0.05)).toMatch(/^About 1 alert in 20 matches of a player who plays as usual/);
    expect(falseAlarmWords(0.2)).toMatch(/1 alert in 5 matches/);
    expect(choiceWords(quiet)).toBe(
      "Line balls missed, Agreed moments passed up. A false alert in about 1 match in 10. Quiet.",
    );
  });

  it("[WA26] says what is usual with its range, whose past that is, and on how many", () => {
    const usual = { mean: 0.31, low: 0.19, high: 0.446, source: "own", n: 214 } as const;
    expect(usualWords("lineMissed", usual)).toBe(
      "Usually 3 in 10 (19 to 45 in 100 in 9 matches of 10). Own level, on 214 own line balls.",
    );
    expect(usualWords("lineMissed", { ...usual, source: "academy", n: 12 })).toMatch(
      /Academy level; 12 own line balls so far\.$/,
    );
    expect(usualWords("passedUp", { ...usual, source: "academy", n: 0 })).toMatch(
      /Academy level; no own moments so far\.$/,
    );
  });

  it("[WA25] says how much is missing until a rate can be watched", () => {
    expect(tooFewWords("lineMissed", 62, 100)).toBe(
      "Not watched until the academy has charted 100 line balls; 62 so far.",
    );
  });
});
