import { describe, expect, it } from "vitest";
import { central90, matchPredictive } from "./beta-posterior.ts";
import { expectedLevel } from "./expected-level.ts";

describe("expected level", () => {
  const predictive = matchPredictive({ a: 5, b: 15 });

  it("[S22] is what was expected before, without attempts", () =>
    expect(expectedLevel(predictive, 0, 0)).toEqual({ mean: 0.25, ...central90(predictive) }));

  it("[S22] moves towards today by today's share of what is known", () => {
    const size = predictive.a + predictive.b;
    const level = expectedLevel(predictive, 9, 12);
    expect(level.mean).toBeCloseTo((size * 0.25 + 9) / (size + 12), 12);
    expect(level.low).toBeLessThan(level.mean);
    expect(level.high).toBeGreaterThan(level.mean);
  });

  it("[S22] has the central 90 % of a distribution known by hand", () => {
    // Beta(1, 1) met by 1 of 1 is Beta(2, 1), whose distribution function is p².
    const level = expectedLevel({ a: 1, b: 1 }, 1, 1);
    expect(level.mean).toBeCloseTo(2 / 3, 12);
    expect(level.low).toBeCloseTo(Math.sqrt(0.05), 10);
    expect(level.high).toBeCloseTo(Math.sqrt(0.95), 10);
  });
});
