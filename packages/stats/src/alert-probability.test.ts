import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { alertProbabilities, alertProbability } from "./alert-probability.ts";
import { cusumScores, withOdds } from "./cusum-scores.ts";
import { smallestThreshold } from "./smallest-threshold.ts";

interface ThresholdCase {
  readonly id: string;
  readonly tolerance: number;
  readonly input: { kind: "threshold"; p0: number; R: number; N: number; alpha: number };
  readonly expected: { u: number; d: number; H: number; fa: number; fa_at_H_minus_1: number };
}
interface ByAttemptCase {
  readonly id: string;
  readonly tolerance: number;
  readonly input: {
    kind: "alert_probability_by_n";
    p0: number;
    R: number;
    H: number;
    theta_odds_ratio: number;
  };
  readonly expected: { at10: number; at20: number; at30: number };
}

const { cases } = JSON.parse(
  readFileSync(new URL("../../../shared/vectors/bernoulli-cusum.json", import.meta.url), "utf8"),
) as { cases: readonly (ThresholdCase | ByAttemptCase)[] };
const thresholds = cases.filter((c): c is ThresholdCase => c.input.kind === "threshold");
const byAttempt = cases.filter((c): c is ByAttemptCase => c.input.kind === "alert_probability_by_n");

/** The probability of a raise by going through every one of the 2^n sequences. */
const byEnumeration = (up: number, down: number, threshold: number, rate: number, n: number): number => {
  const from = (c: number, left: number): number => {
    if (c >= threshold) return 1;
    if (left === 0) return 0;
    return rate * from(c + up, left - 1) + (1 - rate) * from(Math.max(0, c - down), left - 1);
  };
  return from(0, n);
};

describe("probability of an alert", () => {
  it("has every case of its kinds", () => expect([thresholds.length, byAttempt.length]).toEqual([28, 13]));

  it.each(thresholds)(
    "[S14, S15] $id: the smallest threshold at a known rate",
    ({ input, expected, tolerance }) => {
      const scores = cusumScores(input.p0, input.R);
      expect(scores).toEqual({ up: expected.u, down: expected.d });
      const found = smallestThreshold(scores, [input.p0], input.N, input.alpha);
      expect(found.threshold).toBe(expected.H);
      expect(Math.abs(found.falseAlarm - expected.fa)).toBeLessThanOrEqual(tolerance);
      const below = alertProbability(scores, expected.H - 1, input.p0, input.N);
      expect(Math.abs(below - expected.fa_at_H_minus_1)).toBeLessThanOrEqual(tolerance);
    },
  );

  it.each(byAttempt)("[S14] $id: by 10, 20 and 30 attempts", ({ input, expected, tolerance }) => {
    const rate = withOdds(input.p0, input.theta_odds_ratio);
    const path = alertProbabilities(
      cusumScores(input.p0, input.R),
      () => input.H,
      () => rate,
      30,
    );
    const got = [path[9], path[19], path[29]].map((p) => p ?? Number.NaN);
    const wanted = [expected.at10, expected.at20, expected.at30];
    got.forEach((p, i) => {
      expect(Math.abs(p - (wanted[i] ?? Number.NaN))).toBeLessThanOrEqual(tolerance);
    });
  });

  it.each([
    [60, 32, 150, 0.3],
    [71, 20, 142, 0.15],
    [5, 90, 12, 0.9],
    [0, 92, 1, 0.9],
    [92, 0, 300, 0.1],
  ])("[S14] is what going through all sequences gives: %i, %i, %i, %d", (up, down, threshold, rate) => {
    const recursion = alertProbability({ up, down }, threshold, rate, 14);
    expect(recursion).toBeCloseTo(byEnumeration(up, down, threshold, rate, 14), 12);
  });

  it("[S14] is 0 without attempts", () => {
    expect(alertProbability(cusumScores(0.25), 325, 0.25, 0)).toBe(0);
    expect(
      alertProbabilities(
        cusumScores(0.25),
        () => 325,
        () => 0.25,
        0,
      ),
    ).toEqual([]);
  });
});
