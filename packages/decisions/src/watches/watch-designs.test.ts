import { RATES, type Rate } from "@courtloom/match-log";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freezeOpening, type OpeningInput } from "../freeze-opening.ts";
import type { Tally } from "../tally/tally.ts";
import { freezeWatch } from "./freeze-watch.ts";
import { watchDesigns } from "./watch-designs.ts";
import { DEFAULT_WATCH_SETTINGS, type WatchSettings } from "./watch-settings.ts";

const tally = (x: number, n: number): Tally => ({
  version: 2,
  levels: {
    key: { counts: { lineMissed: [x, n], lineShare: [n, n * 4], keptMissed: [x, n * 3] }, cells: {} },
  },
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
  coachingMode: "practice",
  past: { own: { A: [tally(2, 20), tally(3, 9)], B: [] }, academy: ACADEMY },
};
const bothOwn: OpeningInput = {
  ...input,
  players: { A: input.players.A, B: { playerId: "idris", hand: "left", own: true } },
};

const settings = (over: Partial<WatchSettings>): WatchSettings => ({ ...DEFAULT_WATCH_SETTINGS, ...over });
const designs = (from: OpeningInput, a: WatchSettings | null, b: WatchSettings | null = null) =>
  watchDesigns(freezeOpening(from), { A: a, B: b }, from.past.own);

describe("what an opening watches", () => {
  it("[WA11] is line balls missed of each charted own player, by default at one match in twenty", () => {
    const watched = designs(bothOwn, DEFAULT_WATCH_SETTINGS, DEFAULT_WATCH_SETTINGS);
    expect(watched.map(({ side, rate, quiet }) => [side, rate, quiet])).toEqual([
      ["A", "lineMissed", false],
      ["B", "lineMissed", false],
    ]);
    for (const { alpha } of watched) expect(alpha).toBeCloseTo(0.05, 12);
    expect(watched[0]?.pastAttempts).toEqual([20, 9]);
    expect(watched[1]?.pastAttempts).toEqual([]);
  });

  it("[WA11] is nothing of a visitor, of doubles, and of a player without settings", () => {
    expect(designs(input, null, DEFAULT_WATCH_SETTINGS)).toEqual([]);
    const doubles = { ...bothOwn, doubles: true };
    expect(designs(doubles, DEFAULT_WATCH_SETTINGS, DEFAULT_WATCH_SETTINGS)).toEqual([]);
  });

  it("[WA12] leaves out a rate that the academy has charted too little of, and gives its share to the others", () => {
    const rates: readonly Rate[] = ["lineMissed", "keptMissed", "passedUp"];
    const watched = designs(input, settings({ rates }));
    expect(watched.map(({ rate }) => rate)).toEqual(["lineMissed", "keptMissed"]);
    expect(1 - (1 - (watched[0]?.alpha ?? 0)) * (1 - (watched[1]?.alpha ?? 0))).toBeCloseTo(0.05, 12);
    const bare = { ...input, past: { own: { A: [], B: [] }, academy: [tally(3, 9)] } };
    expect(designs(bare, settings({ rates }))).toEqual([]);
    expect(freezeOpening({ ...bare, watches: { A: settings({ rates }), B: null } }).watches).toEqual([]);
  });

  it("[WA12] never has a higher false-alarm probability in all than was chosen, however many rates", () => {
    fc.assert(
      fc.property(
        fc.subarray([...RATES], { minLength: 1, maxLength: 4 }),
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        (rates, alpha) => {
          const watched = designs(input, settings({ rates, alpha }));
          const none = watched.reduce((product, each) => product * (1 - each.alpha), 1);
          expect(1 - none).toBeLessThanOrEqual(alpha + 1e-12);
          expect(watched.every((each) => rates.includes(each.rate))).toBe(true);
          expect(watched.length > 0).toBe(
            rates.some((rate) => designs(input, settings({ rates: [rate] })).length > 0),
          );
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it("[WA11] is frozen with its thresholds, the same each time, and nothing where nothing was chosen", () => {
    const watches = { A: settings({ rates: ["keptMissed", "lineMissed"], quiet: true }), B: null };
    const opened = freezeOpening({ ...input, watches });
    const plain = freezeOpening(input);
    expect(plain.watches).toEqual([]);
    expect(opened).toEqual({ ...plain, watches: designs(input, watches.A).map(freezeWatch) });
    expect(opened.watches.map(({ side, rate }) => [side, rate])).toEqual([
      ["A", "lineMissed"],
      ["A", "keptMissed"],
    ]);
    expect(JSON.stringify(freezeOpening({ ...input, watches }))).toBe(JSON.stringify(opened));
  });

  it("[WA11] watches nothing by settings that cannot be used", () => {
    for (const over of [{ rates: [] }, { alpha: 0 }, { alpha: 0.5 }]) {
      expect(designs(input, settings(over))).toEqual([]);
    }
  });
});
