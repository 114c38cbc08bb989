import { describe, expect, it } from "vitest";
import { BASELINE, COURT, SIDELINE } from "./court.ts";
import { COURT_LINES } from "./court-lines.ts";

describe("[G2] the court", () => {
  it("has the sizes of the rules", () => {
    expect([BASELINE, SIDELINE, COURT.serviceLine]).toEqual([11.885, 4.115, 6.4]);
    expect(COURT.sideFrom).toBeCloseTo(COURT.singlesWidth / 6, 2);
  });

  it("is drawn the same from both ends and both sides", () => {
    const round = (value: number) => Math.round(value * 1000) + 0;
    const key = (x1: number, y1: number, x2: number, y2: number) =>
      [`${round(x1)},${round(y1)}`, `${round(x2)},${round(y2)}`].sort().join(" ");
    const keys = (sx: number, sy: number) =>
      COURT_LINES.map(({ from, to }) => key(sx * from.x, sy * from.y, sx * to.x, sy * to.y)).sort();
    expect(keys(-1, 1)).toEqual(keys(1, 1));
    expect(keys(1, -1)).toEqual(keys(1, 1));
    expect(new Set(COURT_LINES.map((line) => line.part)).size).toBe(7);
  });
});
