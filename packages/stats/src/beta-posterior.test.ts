import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { betaPosterior, central90, matchPredictive } from "./beta-posterior.ts";

interface BaselineCase {
  readonly id: string;
  readonly input: {
    readonly kind: string;
    readonly academy_mean: number;
    readonly academy_strength: number;
    readonly history: readonly (readonly [number, number])[];
    readonly m: number | null;
  };
  readonly expected: { readonly a: number; readonly b: number; readonly lo90: number; readonly hi90: number };
  readonly tolerance: number;
}

interface ThresholdCase {
  readonly id: string;
  readonly input: {
    readonly kind: string;
    readonly a: number;
    readonly b: number;
    readonly m: number | null;
  };
  readonly expected: { readonly M: number };
}

const { cases } = JSON.parse(
  readFileSync(new URL("../../../shared/vectors/baseline-predictive.json", import.meta.url), "utf8"),
) as { cases: (BaselineCase | ThresholdCase)[] };

describe("usual rates", () => {
  const posteriors = cases.filter((c): c is BaselineCase => c.input.kind === "baseline");
  const predictives = cases.filter(
    (c): c is ThresholdCase => c.input.kind === "predictive_threshold" && c.input.m !== null,
  );

  it("has cases to answer", () => expect(Math.min(posteriors.length, predictives.length)).toBeGreaterThan(1));

  it.each(posteriors)("[S2] $id within its tolerance", ({ input, expected, tolerance }) => {
    const past = input.history.map(([x, n]) => ({ x, n }));
    const posterior = betaPosterior(input.academy_mean, past, input.m ?? Number.POSITIVE_INFINITY);
    const range = central90(posterior);
    expect(Math.abs(posterior.a - expected.a)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(posterior.b - expected.b)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(range.low - expected.lo90)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(range.high - expected.hi90)).toBeLessThanOrEqual(tolerance);
  });

  it.each(predictives)("[S3] $id has its match-level size", ({ input, expected }) => {
    const predictive = matchPredictive(input, input.m ?? Number.POSITIVE_INFINITY);
    expect(predictive.a + predictive.b).toBeCloseTo(expected.M, 6);
  });

  it("[S2] without a past is the academy's prior", () =>
    expect(betaPosterior(0.25, [])).toEqual({ a: 5, b: 15 }));
});
