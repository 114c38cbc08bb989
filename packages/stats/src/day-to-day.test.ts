import { describe, expect, it } from "vitest";
import { dayToDaySpread, sameDayCorrelation } from "./day-to-day.ts";
import { drawBeta, drawCount, seeded } from "./testing/seeded.ts";

describe("day-to-day spread", () => {
  it("[S21] is the analysis of variance done by hand", () => {
    // One player: 2 of 10, 5 of 10, 8 of 20. N = 40, mean .375; MSB = (.30625 + .15625 + .0125)/2 = .2375;
    // MSW = (1.6 + 2.5 + 4.8)/37; n0 = (40 - 600/40)/2 = 12.5.
    const within = 8.9 / 37;
    const wanted = (0.2375 - within) / (0.2375 + 11.5 * within);
    const matches = [
      { x: 2, n: 10 },
      { x: 5, n: 10 },
      { x: 8, n: 20 },
    ];
    expect(sameDayCorrelation([matches])).toBeCloseTo(wanted, 12);
    // A second player with one match, and matches without attempts, say nothing of days.
    expect(sameDayCorrelation([[...matches, { x: 0, n: 0 }], [{ x: 9, n: 10 }]])).toBeCloseTo(wanted, 12);
    expect(dayToDaySpread([matches])).toBe(200);
  });

  it("[S21] is 1 where each day is all or nothing", () => {
    const matches = [
      { x: 0, n: 10 },
      { x: 10, n: 10 },
    ];
    expect(sameDayCorrelation([matches])).toBeCloseTo(1, 12);
    expect(dayToDaySpread([matches])).toBe(20);
  });

  it("[S21] does not take players who differ for days that differ", () => {
    const steady = Array.from({ length: 6 }, () => ({ x: 2, n: 20 }));
    const wild = Array.from({ length: 6 }, () => ({ x: 12, n: 20 }));
    expect(sameDayCorrelation([steady, wild])).toBeLessThan(0);
  });

  it("[S21] is 60 when nothing can be said", () => {
    expect(dayToDaySpread([])).toBe(60);
    expect(dayToDaySpread([[{ x: 3, n: 20 }], [{ x: 4, n: 20 }]])).toBe(60);
    expect(
      dayToDaySpread([
        [
          { x: 0, n: 20 },
          { x: 0, n: 30 },
        ],
      ]),
    ).toBe(60);
  });

  it.each([30, 60])("[S21] finds a known spread of %i in a simulated academy", (m) => {
    const random = seeded(20261125 + m);
    const players = Array.from({ length: 120 }, () => {
      const p = drawBeta(random, 5, 15);
      return Array.from({ length: 30 }, () => {
        const n = 8 + Math.floor(random() * 33);
        return { x: drawCount(random, n, drawBeta(random, m * p, m * (1 - p))), n };
      });
    });
    expect(sameDayCorrelation(players)).toBeGreaterThan(0.8 / (m + 1));
    expect(sameDayCorrelation(players)).toBeLessThan(1.2 / (m + 1));
  });
});
