import { describe, expect, it } from "vitest";
import { freezeOpening, type OpeningInput, usualRate } from "./freeze-opening.ts";
import { type Tally, tallyOf } from "./tally.ts";

const tally = (x: number, n: number): Tally => ({
  version: 1,
  lineMissed: { x, n },
  lineShare: { x: n, n: n * 4 },
});
const ACADEMY = Array.from({ length: 20 }, () => tally(6, 20));

const input: OpeningInput = {
  matchId: "m1",
  format: { sets: 3, gamesPerSet: 6, tiebreakAt: 6, tiebreakTo: 7, noAd: false, finalSet: { kind: "same" } },
  firstServer: "B",
  players: {
    A: { playerId: "noor", hand: "right", own: true },
    B: { playerId: "visitor", hand: "unknown", own: false },
  },
  doubles: false,
  coachingMode: "notKnown",
  past: { own: { A: [tally(2, 20)], B: [] }, academy: ACADEMY },
};

describe("usual rates", () => {
  it("[D8] are not given before the academy has charted a hundred balls", () => {
    expect(usualRate("lineMissed", [tally(3, 9)], [tally(3, 9)])).toBeUndefined();
  });

  it("[D8] are the academy's for a newcomer and lean to the own past as it grows", () => {
    const newcomer = usualRate("lineMissed", [], ACADEMY);
    const regular = usualRate(
      "lineMissed",
      Array.from({ length: 12 }, () => tally(2, 20)),
      ACADEMY,
    );
    expect(newcomer).toMatchObject({ source: "academy" });
    expect(newcomer?.mean).toBeCloseTo(0.3, 2);
    expect(regular).toMatchObject({ source: "own" });
    expect(regular?.mean).toBeLessThan(0.15);
    expect(regular?.low).toBeLessThan(regular?.mean ?? 0);
    expect(regular?.high).toBeGreaterThan(regular?.mean ?? 1);
  });

  it("[D8] stay a distribution when the academy never missed", () => {
    expect(
      usualRate(
        "lineMissed",
        [],
        Array.from({ length: 20 }, () => tally(0, 20)),
      )?.mean,
    ).toBeGreaterThan(0);
  });
});

describe("the opening", () => {
  it("[L2] freezes usual rates of own players and charts them", () => {
    const opened = freezeOpening(input);
    expect(opened.subjects).toEqual(["A"]);
    expect(opened.usualRates?.A.lineMissed?.mean).toBeLessThan(0.3);
    expect(opened.usualRates?.B).toEqual({});
  });

  it("[D11] freezes what the pad asks of line balls and of short ones", () => {
    expect(freezeOpening(input).asks).toEqual({
      line: ["ballHeight", "opponent", "ballTime"],
      short: ["ballHeight", "cameIn"],
    });
  });

  it("[L2] doubles are charted for the score only", () => {
    expect(freezeOpening({ ...input, doubles: true }).subjects).toEqual([]);
  });
});

describe("a tally", () => {
  it("[D7] keeps counts and drops the points behind them", () => {
    const count = { x: 1, n: 2, hits: ["a"], others: ["b"] };
    expect(tallyOf({ lineMissed: count, lineShare: count })).toEqual({
      version: 1,
      lineMissed: { x: 1, n: 2 },
      lineShare: { x: 1, n: 2 },
    });
  });
});
