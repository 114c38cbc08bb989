import { figuresOf } from "@courtloom/decisions";
import { type EntryBody, foldLog, type MatchView } from "@courtloom/match-log";
import { makeLog, openedWith } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { MISTAKES } from "./mistakes.ts";
import { previewChange, viewWith } from "./preview-change.ts";

const viewOf = (bodies: readonly EntryBody[]): MatchView => {
  const folded = foldLog(makeLog(bodies, openedWith({ subjects: ["A", "B"] })));
  if (!folded.ok) throw new Error(folded.error);
  return folded.value;
};

/** Counts alone: the points that they stand on have other ids in another log. */
const countsOf = (view: MatchView) => {
  const { A, B } = figuresOf(view);
  return [A, B].map((figures) =>
    figures ? Object.entries(figures).map(([name, count]) => [name, count.x, count.n]) : [],
  );
};

const names = { A: "Noor", B: "Elsbeth" };

describe("mistakes and arguments on court", () => {
  it("[PD80] are at least twenty-five", () => {
    console.log(`${MISTAKES.length} mistakes`);
    expect(MISTAKES.length).toBeGreaterThanOrEqual(25);
    expect(new Set(MISTAKES.map(({ name }) => name)).size).toBe(MISTAKES.length);
  });

  it.each(MISTAKES)("[PD80] $name: mended, equals charted right", ({ charted, mended, right }) => {
    const view = viewOf([...charted, ...mended]);
    const due = viewOf(right);
    expect(view.score).toEqual(due.score);
    expect(view.setAside).toEqual([]);
    expect(countsOf(view)).toEqual(countsOf(due));
  });

  it.each(MISTAKES)("[PD81] $name: the preview says the score that it makes", ({ charted, mended }) => {
    const before = viewOf(charted);
    const after = viewOf([...charted, ...mended]);
    expect(viewWith(before, mended, 1).score).toEqual(after.score);
    expect(previewChange(before, mended, { epoch: 1, names }).impossible).toBeUndefined();
  });
});
