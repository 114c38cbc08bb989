import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clampServeChance, SERVE_CHANCE_RANGE, serveChanceAgainst, serveChanceNow } from "./serve-chance.ts";

const share = fc.double({ min: 0, max: 1, noNaN: true });
const RUNS = { seed: 20261125 };

describe("the chance of a point on serve", () => {
  it("[W10] is one's own serve where the opponent returns as is usual", () =>
    expect(serveChanceAgainst({ serve: 0.64, opponentReturn: 0.4, usual: 0.6 })).toBeCloseTo(0.64, 12));

  it("[W10] falls by what the opponent returns above the usual, and moves with the surface", () => {
    expect(serveChanceAgainst({ serve: 0.64, opponentReturn: 0.45, usual: 0.6 })).toBeCloseTo(0.59, 12);
    expect(serveChanceAgainst({ serve: 0.64, opponentReturn: 0.45, usual: 0.6, here: 0.55 })).toBeCloseTo(
      0.54,
      12,
    );
  });

  it("[W11] is moved by the match: forty points of service weigh as much as what was known before", () => {
    expect(serveChanceNow(0.6, { won: 20, played: 40 })).toBeCloseTo(0.55, 12);
    expect(serveChanceNow(0.6, { won: 8, played: 10 })).toBeCloseTo((24 + 8) / 50, 12);
    expect(serveChanceNow(0.6, { won: 8, played: 10 }, 10)).toBeCloseTo(0.7, 12);
    expect(serveChanceNow(0.6, { won: 0, played: 0 })).toBe(0.6);
  });

  it("[W10] [W11] never leaves 0.05 to 0.95", () => {
    const { low, high } = SERVE_CHANCE_RANGE;
    expect([low, high]).toEqual([0.05, 0.95]);
    expect([clampServeChance(-1), clampServeChance(0.5), clampServeChance(2)]).toEqual([low, 0.5, high]);
    fc.assert(
      fc.property(
        share,
        share,
        share,
        fc.nat({ max: 300 }),
        share,
        (serve, opponentReturn, usual, n, part) => {
          const against = serveChanceAgainst({ serve, opponentReturn, usual });
          const now = serveChanceNow(serve, { won: Math.round(part * n), played: n });
          for (const found of [against, now]) {
            expect(found).toBeGreaterThanOrEqual(low);
            expect(found).toBeLessThanOrEqual(high);
          }
        },
      ),
      RUNS,
    );
  });

  it("[W11] rises with every point won and falls with every point lost", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 0.8, noNaN: true }), fc.nat({ max: 30 }), (before, won) => {
        const now = serveChanceNow(before, { won, played: 40 });
        expect(serveChanceNow(before, { won: won + 1, played: 41 })).toBeGreaterThan(now);
        expect(serveChanceNow(before, { won, played: 41 })).toBeLessThan(now);
      }),
      RUNS,
    );
  });
});
