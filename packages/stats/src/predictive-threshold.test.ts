import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alertProbabilities } from "./alert-probability.ts";
import { betaPosterior, matchPredictive } from "./beta-posterior.ts";
import { designAttempts } from "./horizon.ts";
import { betaNodes, predictiveScores, predictiveThreshold } from "./predictive-threshold.ts";
import { meanFalseAlarm } from "./smallest-threshold.ts";
import { planThresholds, thresholdAt } from "./threshold-plan.ts";

interface Case {
  readonly id: string;
  readonly tolerance: number;
  readonly input: { kind: string; a: number; b: number; m: number | null; N: number; alpha: number };
  readonly expected: { p: number; M: number; u: number; d: number; H: number; fa: number; fa_prev: number };
}

const cases = (
  JSON.parse(
    readFileSync(new URL("../../../shared/vectors/baseline-predictive.json", import.meta.url), "utf8"),
  ) as { cases: readonly Case[] }
).cases.filter((c) => c.input.kind === "predictive_threshold");

describe("threshold of a watch", () => {
  it("has every case of the predictive threshold", () => expect(cases).toHaveLength(7));

  it.each(cases)("[S15] $id: scores, threshold and false alarms", ({ input, expected, tolerance }) => {
    const predictive = matchPredictive(input, input.m ?? Number.POSITIVE_INFINITY);
    const scores = predictiveScores(predictive);
    expect(scores).toEqual({ up: expected.u, down: expected.d });
    const { threshold, falseAlarm } = predictiveThreshold(predictive, input.N, input.alpha);
    expect(threshold).toBe(expected.H);
    expect(Math.abs(falseAlarm - expected.fa)).toBeLessThanOrEqual(tolerance);
    const below = meanFalseAlarm(scores, expected.H - 1, betaNodes(predictive), input.N);
    expect(Math.abs(below - expected.fa_prev)).toBeLessThanOrEqual(tolerance);
  });

  const pasts = fc.record({
    mean: fc.double({ min: 0.08, max: 0.6, noNaN: true }),
    past: fc.array(
      fc.integer({ min: 5, max: 40 }).chain((n) => fc.record({ n: fc.constant(n), x: fc.nat({ max: n }) })),
      { maxLength: 6 },
    ),
    attempts: fc.constantFrom(20, 30, 40),
  });

  it("[S15] falls as more false alarms are allowed", () => {
    const alphas = fc.tuple(
      fc.double({ min: 0.01, max: 0.2, noNaN: true }),
      fc.double({ min: 0.01, max: 0.2, noNaN: true }),
    );
    fc.assert(
      fc.property(pasts, alphas, ({ mean, past, attempts }, [one, other]) => {
        const predictive = matchPredictive(betaPosterior(mean, past));
        const strict = predictiveThreshold(predictive, attempts, Math.min(one, other));
        const loose = predictiveThreshold(predictive, attempts, Math.max(one, other));
        expect(strict.threshold).toBeGreaterThanOrEqual(loose.threshold);
        expect(strict.falseAlarm).toBeLessThanOrEqual(Math.min(one, other));
      }),
      { seed: 20261125, numRuns: 25 },
    );
  });

  it("[S16, S18] is never lower past N, and quiet is never lower than ordinary", () => {
    fc.assert(
      fc.property(pasts, ({ mean, past, attempts }) => {
        const design = { posterior: betaPosterior(mean, past), attempts, alpha: 0.05 };
        const plan = planThresholds(design);
        const quiet = planThresholds({ ...design, quiet: true });
        expect(plan.second).toBeGreaterThanOrEqual(plan.first);
        expect(quiet.second).toBeGreaterThanOrEqual(quiet.first);
        expect(quiet.first).toBeGreaterThanOrEqual(plan.first);
        expect(quiet.second).toBeGreaterThanOrEqual(plan.second);
      }),
      { seed: 20261125, numRuns: 15 },
    );
  });

  it("[S16] is in force for N, then for all that follows, with at most twice the false alarms by 2N", () => {
    const posterior = { a: 5, b: 15 };
    const plan = planThresholds({ posterior, attempts: 40, alpha: 0.05 });
    expect(plan).toEqual({
      attempts: 40,
      first: 605,
      second: predictiveThreshold(matchPredictive(posterior), 80, 0.05).threshold,
    });
    expect([1, 40, 41, 80, 500].map((k) => thresholdAt(plan, k))).toEqual([
      plan.first,
      plan.first,
      plan.second,
      plan.second,
      plan.second,
    ]);
    const predictive = matchPredictive(posterior);
    const nodes = betaNodes(predictive);
    const raisedBy = (attempt: number): number =>
      nodes.reduce((sum, rate) => {
        const path = alertProbabilities(
          predictiveScores(predictive),
          (k) => thresholdAt(plan, k),
          () => rate,
          80,
        );
        return sum + (path[attempt - 1] ?? Number.NaN);
      }, 0) / nodes.length;
    expect(raisedBy(40)).toBeLessThanOrEqual(0.05);
    expect(raisedBy(80)).toBeLessThanOrEqual(0.1);
    expect(raisedBy(80)).toBeGreaterThan(raisedBy(40));
  });

  it("[S18] quiet keeps the false alarms down where the rate is as high as it may well be", () => {
    const posterior = betaPosterior(
      0.25,
      Array.from({ length: 5 }, () => ({ x: 6, n: 24 })),
    );
    const predictive = matchPredictive(posterior);
    const scores = predictiveScores(predictive);
    const nodes = betaNodes(predictive);
    const ordinary = planThresholds({ posterior, attempts: 30, alpha: 0.05 }).first;
    const quiet = planThresholds({ posterior, attempts: 30, alpha: 0.05, quiet: true }).first;
    expect(meanFalseAlarm(scores, ordinary, nodes, 30)).toBeGreaterThan(0.045);
    expect(meanFalseAlarm(scores, quiet, nodes, 30)).toBeLessThan(0.04);
  });

  it("[S18] quiet without day-to-day spread designs for one rate", () => {
    const design = { posterior: { a: 20, b: 60 }, m: Number.POSITIVE_INFINITY, attempts: 30, alpha: 0.05 };
    expect(planThresholds({ ...design, quiet: true }).first).toBeGreaterThan(planThresholds(design).first);
  });
});

describe("attempts that a watch is designed for", () => {
  it.each([
    [[], 40],
    [[30, 30, 30, 30], 40],
    [[0, 0, 12, 12, 12, 12], 40],
    [[12, 12, 12, 12, 12], 20],
    [[21, 25, 33, 31, 28, 22, 30, 27, 26, 41], 40],
    [[21, 25, 30, 30, 28, 22, 30, 27, 26, 41], 30],
    [[95, 90, 120, 88, 99], 80],
  ])("[S17] %j: %i", (past, wanted) => expect(designAttempts(past)).toBe(wanted));
});
