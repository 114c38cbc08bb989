import { describe, expect, it } from "vitest";
import { boardColumns, isDense } from "./board-columns.ts";

describe("board columns", () => {
  it("[BD10] fills a wide screen evenly", () => {
    expect([0, 1, 2, 3, 4, 5, 6, 8, 9, 12, 13, 16].map(boardColumns)).toEqual([
      1, 1, 2, 3, 2, 3, 3, 4, 4, 4, 5, 5,
    ]);
  });

  it("[BD10] draws denser from the third row on", () => {
    expect([1, 4, 8].map(isDense)).toEqual([false, false, false]);
    expect([9, 12, 16].map(isDense)).toEqual([true, true, true]);
  });
});
