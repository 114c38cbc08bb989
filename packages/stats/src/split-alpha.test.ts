import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { bonferroniSplit, sidakSplit } from "./split-alpha.ts";

interface Case {
  readonly id: string;
  readonly tolerance: number;
  readonly input: { readonly kind: string; readonly alpha_player: number; readonly streams: number };
  readonly expected: { readonly alpha_stream: number };
}

const cases = (
  JSON.parse(readFileSync(new URL("../../../shared/vectors/multiplicity.json", import.meta.url), "utf8")) as {
    cases: readonly Case[];
  }
).cases.filter((c) => c.input.kind === "sidak");

describe("error rate split over watches", () => {
  it("has every case of the split", () => expect(cases).toHaveLength(2));

  it.each(cases)("[S20] $id within its tolerance", ({ input, expected, tolerance }) => {
    const split = sidakSplit(input.alpha_player, input.streams);
    expect(Math.abs(split - expected.alpha_stream)).toBeLessThanOrEqual(tolerance);
  });

  it("[S20] leaves one watch its own, and is a little above the one that is always safe", () => {
    expect(sidakSplit(0.05, 1)).toBeCloseTo(0.05, 15);
    expect(bonferroniSplit(0.05, 4)).toBe(0.0125);
    expect(sidakSplit(0.05, 4)).toBeGreaterThan(bonferroniSplit(0.05, 4));
    expect(1 - (1 - sidakSplit(0.05, 4)) ** 4).toBeCloseTo(0.05, 14);
  });
});
