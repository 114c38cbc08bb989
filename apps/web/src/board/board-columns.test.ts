import { describe, expect, it } from "vitest";
import { boardColumns, boardStep } from "./board-columns.ts";

describe("board columns", () => {
  it("[BD10, BD41] fills a wide screen evenly", () => {
    expect([0, 1, 2, 3, 4, 5, 6, 8, 9, 12, 13, 16, 17, 20, 24, 32, 36, 64].map(boardColumns)).toEqual([
      1, 1, 2, 3, 2, 3, 3, 4, 4, 4, 4, 4, 5, 5, 6, 7, 8, 8,
    ]);
  });

  it("[BD10, BD41] draws denser the more courts there are", () => {
    expect([1, 8, 9, 12, 13, 16, 32, 35, 36, 64].map(boardStep)).toEqual([
      ...["roomy", "roomy", "dense", "dense", "tight", "tight", "tight", "tight", "tiny", "tiny"],
    ]);
  });
});
