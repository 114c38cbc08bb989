import { figuresOf } from "@courtloom/decisions";
import { type EntryBody, foldLog, type MatchView } from "@courtloom/match-log";
import { makeLog, openedWith } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { MISTAKES } from "./mistakes.ts";
import { previewChange, viewWith } from "./preview-change.ts";

const usual = openedWith();
/** Both are the academy's and charted; B is left-handed. */
const OPENED = openedWith({
  subjects: ["A", "B"],
  players: { A: usual.players.A, B: { ...usual.players.B, own: true } },
});

const viewOf = (bodies: readonly EntryBody[]): MatchView => {
  const folded = foldLog(makeLog(bodies, OPENED));
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

/** All that is known of each point that counts, but for its id and place in the log. */
const pointsOf = (view: MatchView) =>
  view.points.map(({ point, before, after, server, subjects }) => ({
    point,
    before,
    after,
    server,
    subjects,
  }));

const names = { A: "Noor", B: "Elsbeth" };

describe("mistakes and arguments on court", () => {
  it("[PD80] are at least twenty-five", () => {
    console.log(`${MISTAKES.length} mistakes`);
    expect(MISTAKES.length).toBeGreaterThanOrEqual(25);
    expect(new Set(MISTAKES.map(({ name }) => name)).size).toBe(MISTAKES.length);
  });

  it.each(MISTAKES)(
    "[PD80] $name: mended, equals charted right",
    ({ charted, mended, right, pointsDiffer }) => {
      const view = viewOf([...charted, ...mended(viewOf(charted))]);
      const due = viewOf(right);
      expect(view.score).toEqual(due.score);
      expect(view.setAside).toEqual([]);
      expect(countsOf(view)).toEqual(countsOf(due));
      if (!pointsDiffer) expect(pointsOf(view)).toEqual(pointsOf(due));
    },
  );

  it.each(MISTAKES)("[PD81] $name: the preview says the score that it makes", ({ charted, mended }) => {
    const before = viewOf(charted);
    const bodies = mended(before);
    const after = viewOf([...charted, ...bodies]);
    expect(bodies.length).toBeGreaterThan(0);
    expect(viewWith(before, bodies, 1).score).toEqual(after.score);
    expect(previewChange(before, bodies, { epoch: 1, names }).impossible).toBeUndefined();
  });
});
