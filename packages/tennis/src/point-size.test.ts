import { describe, expect, it } from "vitest";
import { format, next, play, point } from "../test-support/play.ts";
import { POINT_SIZE_STEPS, pointSize } from "./point-size.ts";
import { createWinChances } from "./win-chances.ts";

/** 0.01, 0.02 … 0.40. */
const FORTY = Array.from({ length: 40 }, (_, index) => (index + 1) / 100);

describe("the size of a point", () => {
  it("[W12] is a rank among the points that it is set against, the biggest being 1", () => {
    expect(pointSize(0.4, FORTY)).toEqual({ rank: 1, of: 40, step: "top5" });
    expect(pointSize(0.01, FORTY)).toEqual({ rank: 40, of: 40, step: null });
    expect(pointSize(0.3, [])).toBeUndefined();
  });

  it("[W13] steps at the top 5 %, the top 10 % and the top quarter", () => {
    expect(POINT_SIZE_STEPS.map(({ share }) => share)).toEqual([0.05, 0.1, 0.25]);
    const steps = FORTY.map((importance) => pointSize(importance, FORTY)?.step);
    expect(steps.filter((step) => step === "top5")).toHaveLength(2);
    expect(steps.filter((step) => step === "top10")).toHaveLength(2);
    expect(steps.filter((step) => step === "topQuarter")).toHaveLength(6);
  });

  it("[W13] calls nothing big among too few, nor what many others equal", () => {
    expect(pointSize(0.3, [0.1, 0.2, 0.3])).toEqual({ rank: 1, of: 3, step: null });
    expect(pointSize(0.4, FORTY.slice(-19))?.step).toBe("top10");
    expect(pointSize(0.4, FORTY.slice(-20))?.step).toBe("top5");
    const level = [...FORTY.slice(0, 30), ...Array<number>(10).fill(0.5)];
    expect(pointSize(0.5, level)).toEqual({ rank: 1, of: 40, step: "topQuarter" });
    expect(pointSize(0.5 + 1e-15, level)).toEqual(pointSize(0.5, level));
  });

  it("[W12] finds set point in a tie-break among the biggest of a set so far", () => {
    let board = play(format());
    const chances = createWinChances(format(), 0.6, 0.6);
    const sizes: number[] = [];
    const letters = `${"AAAABBBB".repeat(6)}ABABABABABA`;
    for (const letter of letters) {
      sizes.push(chances.importance(board.state)?.inMatch ?? Number.NaN);
      board = next(board, point(letter === "A" ? "A" : "B"));
    }
    expect(board.state).toMatchObject({ games: [6, 6], points: [6, 5] });
    const now = chances.importance(board.state)?.inMatch ?? Number.NaN;
    expect(pointSize(now, [...sizes, now])).toMatchObject({ of: sizes.length + 1, step: "top5" });
    expect(pointSize(sizes[0] ?? Number.NaN, [...sizes, now])?.step).toBeNull();
  });
});
