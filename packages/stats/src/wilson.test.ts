import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wilson } from "./wilson.ts";

interface Case {
  readonly id: string;
  readonly input: { readonly method: string; readonly x: number; readonly n: number; readonly conf: number };
  readonly expected: { readonly lo: number; readonly hi: number };
  readonly tolerance: number;
}

const { cases } = JSON.parse(
  readFileSync(new URL("../../../shared/vectors/intervals.json", import.meta.url), "utf8"),
) as { cases: Case[] };
/** Standard normal points for the confidence levels of the cases. */
const Z: Record<string, number> = {
  "0.9": 1.6448536269514722,
  "0.95": 1.959963984540054,
  "0.99": 2.5758293035489004,
};

describe("wilson", () => {
  const mine = cases.filter((c) => c.input.method === "wilson");

  it("has cases to answer", () => expect(mine.length).toBeGreaterThan(10));

  it.each(mine)("[S1] $id within its tolerance", ({ input, expected, tolerance }) => {
    const z = Z[String(input.conf)];
    expect(z).toBeDefined();
    const interval = wilson(input.x, input.n, z);
    expect(Math.abs((interval?.low ?? Number.NaN) - expected.lo)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs((interval?.high ?? Number.NaN) - expected.hi)).toBeLessThanOrEqual(tolerance);
  });

  it("[S1] says nothing of no attempts", () => expect(wilson(0, 0)).toBeUndefined());

  it("[S1] holds the raw rate and stays within 0 and 1", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (n, share) => {
          const x = Math.round(share * n);
          const interval = wilson(x, n);
          if (!interval) return false;
          return interval.low >= 0 && interval.low <= x / n && x / n <= interval.high && interval.high <= 1;
        },
      ),
      { seed: 20261125 },
    );
  });
});
