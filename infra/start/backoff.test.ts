import { describe, expect, it } from "vitest";
import { fallsAfter, pauseBeforeStartMs } from "./backoff.ts";

describe("backoff", () => {
  it("[ST9] doubles from 200 ms to 15 s", () => {
    expect([1, 2, 3, 4, 7, 8, 9, 1000].map(pauseBeforeStartMs)).toEqual([
      200, 400, 800, 1600, 12_800, 15_000, 15_000, 15_000,
    ]);
  });

  it("[ST9] begins anew after a run of 30 s", () => {
    expect(fallsAfter(0, 10)).toBe(1);
    expect(fallsAfter(5, 29_999)).toBe(6);
    expect(fallsAfter(5, 30_000)).toBe(1);
  });
});
