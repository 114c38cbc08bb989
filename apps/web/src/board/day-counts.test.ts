import { describe, expect, it } from "vitest";
import { countDay, countItems } from "./day-counts.ts";

describe("counts of a day", () => {
  it("[BD8] counts a silent court as silent and not as in play", () => {
    const counts = countDay([
      { state: "playing", freshness: "heard" },
      { state: "playing", freshness: "notHeard" },
      { state: "playing", freshness: "blind" },
      { state: "waiting", freshness: "none" },
      { state: "over", freshness: "none" },
      { state: "empty", freshness: "none" },
    ]);
    expect(counts).toEqual({ inPlay: 1, silent: 2, waiting: 1, suspended: 0, over: 1 });
    expect(countItems(counts).map(({ count, word }) => `${count} ${word}`)).toEqual([
      "1 in play",
      "2 silent",
      "1 waiting",
      "1 over",
    ]);
  });

  it("[BD8] says that none is in play", () => {
    expect(countItems(countDay([]))).toEqual([{ count: 0, word: "in play" }]);
  });
});
