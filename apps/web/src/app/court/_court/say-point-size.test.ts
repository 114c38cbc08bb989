import { describe, expect, it } from "vitest";
import { sayPointSize } from "./say-point-size.ts";

describe("the size of the point to be played", () => {
  it("[HF20] is said as a rank where it is big, and not at all otherwise", () => {
    const size = { rank: 2, of: 43, source: "default" } as const;
    expect(sayPointSize({ ...size, step: "top5" })).toBe(
      "This point: one of the biggest so far, 2 of 43 by the score",
    );
    expect(sayPointSize({ ...size, step: "top10" })).toContain("among the biggest tenth so far");
    expect(sayPointSize({ ...size, step: "topQuarter" })).toContain("among the biggest quarter so far");
    expect(sayPointSize({ ...size, rank: 30, step: null })).toBeUndefined();
    expect(sayPointSize(undefined)).toBeUndefined();
  });
});
