import type { UsualRate } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { freezeWatch } from "./freeze-watch.ts";

const usual: UsualRate = { mean: 0.25, low: 0.1, high: 0.4, a: 20, b: 60, source: "own" };
const design = {
  side: "A",
  rate: "lineMissed",
  usual,
  pastAttempts: [8, 12, 31, 18, 22],
  alpha: 0.05,
  quiet: false,
} as const;

describe("a watch as it is frozen", () => {
  it("[WA1, WA2] has whole scores, the player's horizon and thresholds that never fall", () => {
    const frozen = freezeWatch(design);
    expect(frozen).toMatchObject({ version: 1, up: 60, down: 32, horizon: 40, usual: 0.25, alpha: 0.05 });
    expect(frozen.red.late).toBeGreaterThanOrEqual(frozen.red.first);
    expect(frozen.amber.late).toBeGreaterThanOrEqual(frozen.amber.first);
    expect(frozen.amber.first).toBeLessThan(frozen.red.first);
    expect([frozen.red.first, frozen.amber.first].every(Number.isInteger)).toBe(true);
  });

  it("[WA2] is harder to raise where the error rate is split over more watches, and when quiet", () => {
    const frozen = freezeWatch(design);
    expect(freezeWatch({ ...design, alpha: 0.0127 }).red.first).toBeGreaterThan(frozen.red.first);
    expect(freezeWatch({ ...design, quiet: true }).red.first).toBeGreaterThan(frozen.red.first);
  });
});
