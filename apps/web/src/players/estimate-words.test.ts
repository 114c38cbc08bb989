import { describe, expect, it } from "vitest";
import { chancesWords, costWords, signedWorth, sizeWords, worthWords } from "./estimate-words.ts";
import { likelyWords } from "./likely-words.ts";

const estimate = (value: number, low: number, high: number) => ({
  ...{ value, low, high },
  distinguishable: low > 0 || high < 0,
});

describe("estimates in words", () => {
  it("[PF13] a difference is said in points of every 10 balls, with its interval and its sign", () => {
    expect(worthWords(estimate(-0.29, -0.41, -0.12))).toBe(
      "About 3 points fewer in every 10 balls, likely between 1 and 4",
    );
    expect(worthWords(estimate(0.08, 0.01, 0.15))).toBe(
      "About 0.8 points more in every 10 balls, likely between 0.1 and 2",
    );
    expect(signedWorth(estimate(0.22, 0.1, 0.3))).toBe("+2");
    expect(signedWorth(estimate(-0.29, -0.41, -0.12))).toBe("−3");
    expect(sizeWords(0.97)).toBe("1");
  });

  it("[PF12] a cost is points with an interval, and says no number where it is not distinguishable", () => {
    expect(costWords(estimate(4.2, 1.1, 7.4))).toBe("About 4 points fewer, likely between 1 and 7");
    expect(costWords(estimate(-2, -3, -1))).toBe("About 2 points more, likely between 1 and 3");
    expect(costWords(estimate(4.2, -1.1, 7.4))).not.toMatch(/\d/);
    expect(chancesWords(estimate(0.42, 0.1, 0.71))).toBe(
      "About 42 in 100 of a match fewer, likely between 10 and 71",
    );
    expect(chancesWords(estimate(0.42, -0.1, 0.71))).not.toMatch(/\d/);
  });

  it("[PF4] under five there is no interval to say", () => {
    expect(likelyWords({ n: 4, low: 0.1, high: 0.9 })).toBe("");
    expect(likelyWords({ n: 9, low: 0.2667, high: 0.8112 })).toBe("likely 27 to 81 in 100");
  });
});
