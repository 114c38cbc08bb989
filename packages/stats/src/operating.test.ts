import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { cusumScores, withOdds } from "./cusum-scores.ts";
import { operating } from "./operating.ts";
import { averageRunLength } from "./run-length.ts";
import { smallestThreshold } from "./smallest-threshold.ts";

interface OperatingCase {
  readonly id: string;
  readonly tolerance: number;
  readonly input: {
    readonly kind: "operating";
    readonly p0: number;
    readonly R_design: number;
    readonly alpha: number;
    readonly N: number;
    readonly u: number;
    readonly d: number;
    readonly H: number;
    readonly shift_odds_ratio: number;
    readonly shift_after: number;
  };
  readonly expected: {
    readonly p_false_before: number;
    readonly p_detect: number;
    readonly mean_delay_given_detect: number;
    readonly restricted_mean_delay: number;
    readonly fa_per_match: number;
  };
}
interface RunCase {
  readonly id: string;
  readonly tolerance: number;
  readonly input: {
    readonly kind: "arl_from_zero";
    readonly p0: number;
    readonly R: number;
    readonly H: number;
  };
  readonly expected: { readonly arl0: number; readonly arl_or2: number; readonly arl_or3: number };
}
interface PublishedCase {
  readonly id: string;
  readonly tolerance: number;
  readonly input: { readonly kind: string; readonly p0: number; readonly R: number; readonly h_nats: number };
  readonly expected: { readonly arl0: number };
}

const read = <T>(file: string): readonly T[] =>
  (
    JSON.parse(readFileSync(new URL(`../../../shared/vectors/${file}.json`, import.meta.url), "utf8")) as {
      cases: T[];
    }
  ).cases;
const matches = read<OperatingCase>("alert-operating").filter((c) => c.input.kind === "operating");
const runs = read<RunCase>("bernoulli-cusum").filter((c) => c.input.kind === "arl_from_zero");
const published = read<PublishedCase>("bernoulli-cusum").filter(
  (c) => c.input.kind === "arl_from_zero_continuous_scores",
);
const near = (value: number | undefined, wanted: number, tolerance: number): void =>
  expect(Math.abs((value ?? Number.NaN) - wanted)).toBeLessThanOrEqual(tolerance);

describe("how a watch does", () => {
  it("has every case", () => expect([matches.length, runs.length, published.length]).toEqual([16, 3, 1]));

  it.each(matches)("[S19] $id: false before, found, delay", ({ input, expected, tolerance }) => {
    const scores = cusumScores(input.p0, input.R_design);
    expect(scores).toEqual({ up: input.u, down: input.d });
    const { threshold, falseAlarm } = smallestThreshold(scores, [input.p0], input.N, input.alpha);
    expect(threshold).toBe(input.H);
    near(falseAlarm, expected.fa_per_match, tolerance);
    const after = withOdds(input.p0, input.shift_odds_ratio);
    const got = operating(scores, threshold, {
      before: input.p0,
      after,
      shiftAfter: input.shift_after,
      attempts: input.N,
    });
    near(got.falseBefore, expected.p_false_before, tolerance);
    near(got.detected, expected.p_detect, tolerance);
    near(got.meanDelay, expected.mean_delay_given_detect, tolerance);
    near(got.restrictedMeanDelay, expected.restricted_mean_delay, tolerance);
  });

  it("[S19] finds nothing where no path reaches the threshold", () => {
    const shift = { before: 0.2, after: 0.4, shiftAfter: 5, attempts: 8 };
    expect(operating({ up: 60, down: 32 }, 1000, shift)).toEqual({
      falseBefore: 0,
      detected: 0,
      meanDelay: undefined,
      restrictedMeanDelay: 3,
    });
  });

  it.each(runs)("[S19] $id: mean attempts until a raise", ({ input, expected, tolerance }) => {
    const scores = cusumScores(input.p0, input.R);
    near(averageRunLength(scores, input.H, input.p0), expected.arl0, tolerance);
    near(averageRunLength(scores, input.H, withOdds(input.p0, 2)), expected.arl_or2, tolerance);
    near(averageRunLength(scores, input.H, withOdds(input.p0, 3)), expected.arl_or3, tolerance);
  });

  it.each(published)(
    "[S19] $id: as published, for scores that are not rounded",
    ({ input, expected, tolerance }) => {
      // Rounding to 100 points per nat moves this length by 4 %; 4,000 per nat stand for scores that are not rounded.
      const fine = 4000;
      const log = Math.log(1 + (input.R - 1) * input.p0);
      const scores = { up: Math.round(fine * (Math.log(input.R) - log)), down: Math.round(fine * log) };
      near(averageRunLength(scores, fine * input.h_nats, input.p0), expected.arl0, tolerance);
    },
  );

  it("[S19] is never reached without events, and at once where one event is enough", () => {
    expect(averageRunLength(cusumScores(0.25), 300, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(averageRunLength({ up: 0, down: 92 }, 300, 0.5)).toBe(Number.POSITIVE_INFINITY);
    expect(averageRunLength({ up: 60, down: 32 }, 60, 0.25)).toBeCloseTo(4, 9);
  });
});
