import { describe, expect, it } from "vitest";
import { judge } from "./judge.ts";

const turns = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([ours, floor]) => ({ ours, floor }));

describe("judging ours against a floor", () => {
  it("[BN2] takes the median of the turns' own ratios, so that one bad turn decides nothing", () => {
    const judged = judge(turns([10, 10], [90, 10], [12, 10]), 1.5);
    expect(judged).toEqual({ ratio: 1.2, spread: 1, verdict: "kept" });
  });

  it("[BN2] keeps the bar at the bar itself and misses it above", () => {
    expect(judge(turns([15, 10]), 1.5).verdict).toBe("kept");
    expect(judge(turns([15.1, 10]), 1.5).verdict).toBe("missed");
  });

  it("[BN2, BN6] judges nothing without a bar", () => {
    expect(judge(turns([90, 10], [90, 30]), undefined)).toEqual({ ratio: 3, spread: 3, verdict: "printed" });
  });

  it("[BN3] calls a floor that differs by more than 1.5 too noisy, whatever the ratio", () => {
    expect(judge(turns([10, 10], [15, 15]), 1.5).verdict).toBe("kept");
    expect(judge(turns([10, 10], [15, 15.2]), 1.5).verdict).toBe("noisy");
    expect(judge(turns([90, 10], [90, 30]), 1.5).verdict).toBe("noisy");
  });

  it("[BN2] does not keep a bar with nothing measured", () => {
    expect(judge([], 1.5).verdict).toBe("missed");
    expect(judge(turns([Number.NaN, 10]), 1.5).verdict).toBe("missed");
  });
});
