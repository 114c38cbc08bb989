import { describe, expect, it } from "vitest";
import { STANDARD } from "../test-support/play.ts";
import { formatErrorText } from "./format-error.ts";
import { parseFormat } from "./parse-format.ts";

const { noAd: _, ...WITHOUT_NO_AD } = STANDARD;

describe("formats from outside", () => {
  it("[F1] reads every setting", () => {
    const full = {
      ...STANDARD,
      sets: 5,
      tiebreakAt: null,
      tiebreakWinBy: 1,
      noAd: 2,
      finalSet: { kind: "matchTiebreak", to: 10, winBy: 1 },
      tbEnds: "coman",
      tbServe: "pairs",
      matchTiebreakEnds: "everyFour",
      matchTiebreakServe: "oneThenTwo",
      tieBreakOnly: { to: 7, winBy: 2 },
      gameLead: 1,
      fixedGames: 7,
      ends: "setEnds",
      noLet: true,
    };
    expect(parseFormat(full)).toEqual({ ok: true, value: full });
  });

  it.each([
    [null, "format must be an object with named members"],
    [[], "format must be an object with named members"],
    [WITHOUT_NO_AD, "noAd is missing: write true, false, or"],
    [{ ...STANDARD, sets: 2 }, "sets must be one of 1, 3, 5, not 2"],
    [{ ...STANDARD, gamesPerSet: 0 }, "gamesPerSet must be a whole number from 1 to 200, not 0"],
    [{ ...STANDARD, gamesPerSet: 6.5 }, "gamesPerSet must be a whole number from 1 to 200, not 6.5"],
    [{ ...STANDARD, tiebreakAt: "6" }, "tiebreakAt must be a whole number from 1 to 200, or null"],
    [{ ...STANDARD, noAd: 0 }, "noAd must be true, false, or"],
    [{ ...STANDARD, tieBreakTo: 7 }, "tieBreakTo is not a setting of a format; the settings are sets,"],
    [{ ...STANDARD, tbEnds: "often" }, 'tbEnds must be one of "six", "coman"'],
    [{ ...STANDARD, finalSet: "same" }, 'finalSet must be an object, not "same"'],
    [{ ...STANDARD, finalSet: { kind: "long" } }, "finalSet.kind must be one of same, advantage, tiebreak"],
    [{ ...STANDARD, finalSet: { kind: "tiebreak", tiebreakAt: 6 } }, "finalSet.tiebreakTo is missing"],
    [{ ...STANDARD, finalSet: { kind: "same", to: 10 } }, "finalSet.to is not a setting"],
    [{ ...STANDARD, tieBreakOnly: { to: 7, winBy: 3 } }, "tieBreakOnly.winBy must be one of 1, 2, not 3"],
    [{ ...STANDARD, fixedGames: 8 }, "fixedGames must be odd, or even with tiebreakAt 4, not 8"],
  ])("[F2] says what is wrong with %j", (value, text) => {
    const parsed = parseFormat(value);
    expect(parsed.ok ? "accepted" : formatErrorText(parsed.error)).toContain(text);
  });
});
