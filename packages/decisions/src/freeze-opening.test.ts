import { describe, expect, it } from "vitest";
import { freezeOpening, type OpeningInput } from "./freeze-opening.ts";
import { STARTER_PLAN } from "./plan/starter-plan.ts";
import type { Tally } from "./tally/tally.ts";
import { usualRate } from "./usual-rate.ts";

const tally = (x: number, n: number): Tally => ({
  version: 2,
  levels: { key: { counts: { lineMissed: [x, n], lineShare: [n, n * 4], passedUp: [x, n] }, cells: {} } },
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

  it("[D8, D41] freezes a usual rate for each watched rate that the academy has charted enough of", () => {
    expect(Object.keys(freezeOpening(input).usualRates?.A ?? {})).toEqual([
      "lineMissed",
      "lineShare",
      "passedUp",
    ]);
  });

  it("[D41] freezes the plans of own players with their versions, and asks what they need", () => {
    const plan = { planId: "p7", version: 3, rules: STARTER_PLAN };
    const timed = { id: "k", when: {}, aim: "keep", lineOn: [{ ballTime: ["set"] }], targets: [] } as const;
    const opened = freezeOpening({ ...input, plans: { A: { ...plan, rules: [timed] }, B: plan } });
    expect(opened).toMatchObject({
      plans: { A: { planId: "p7", rules: [timed] }, B: null },
      planVersion: "p7@3",
      asks: { line: ["ballTime"], short: ["ballHeight", "ballTime", "cameIn"] },
    });
    const both = { A: input.players.A, B: { ...input.players.B, own: true } };
    const plans = { A: plan, B: { ...plan, planId: "p8", rules: [timed] } };
    expect(freezeOpening({ ...input, players: both, plans })).toMatchObject({
      planVersion: "p7@3 p8@3",
      asks: { line: ["ballHeight", "opponent", "ballTime"], short: ["ballHeight", "ballTime", "cameIn"] },
    });
  });

  it("[D41] without a plan judges nothing and asks as before; hesitation only where wanted", () => {
    const opened = freezeOpening({ ...input, wantsHesitation: true });
    expect(opened).toMatchObject({
      planVersion: null,
      asks: { line: expect.arrayContaining(["hesitated"]) },
    });
    expect("plans" in opened).toBe(false);
    expect(freezeOpening(input).asks?.line).not.toContain("hesitated");
  });
});
