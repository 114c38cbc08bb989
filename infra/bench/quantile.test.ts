import { describe, expect, it } from "vitest";
import { median, quantile } from "./quantile.ts";

describe("quantiles", () => {
  it("[BN2] finds the value that the share does not exceed, in any order", () => {
    const values = [9, 1, 8, 2, 7, 3, 6, 4, 5, 10];
    expect([0, 0.1, 0.5, 0.95, 1].map((q) => quantile(values, q))).toEqual([1, 1, 5, 10, 10]);
    expect(values[0]).toBe(9);
  });

  it("[BN2] sorts by size, not by writing", () => {
    expect(median([100, 9, 20])).toBe(20);
  });

  it("[BN2] has no figure for no values", () => {
    expect(median([])).toBeNaN();
  });
});
