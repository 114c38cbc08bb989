import { attemptsOf } from "@courtloom/decisions";
import { describe, expect, it } from "vitest";
import { attemptRun } from "./attempt-run.ts";
import { courtTrial } from "./court-trial.ts";

describe("the attempts behind an alert", () => {
  const { view } = courtTrial();
  const all = attemptsOf(view, "A", "lineMissed");

  it("[AS24] are all that the watch counted, each with its point, and the run is the last of them", () => {
    const run = attemptRun(view, {
      side: "A",
      rate: "lineMissed",
      since: { x: 2, n: 3, from: { pointId: "", set: 1, games: [0, 0] } },
    });
    expect(run).toHaveLength(all.length);
    expect(run.map(({ isHit }) => isHit)).toEqual(all.map(({ event }) => event));
    expect(run.filter(({ isInRun }) => isInRun)).toEqual(run.slice(-3));
    expect(run.map(({ pos }) => pos)).toEqual(all.map(({ at }) => view.points[at]?.pos));
    expect(run[0]?.score).toMatch(/0–0/);
  });

  it("[AS24] have no run while there is none, and are none of a player who was not charted", () => {
    expect(attemptRun(view, { side: "A", rate: "lineMissed" }).some(({ isInRun }) => isInRun)).toBe(false);
    expect(attemptRun(view, { side: "B", rate: "lineMissed" })).toEqual([]);
  });
});
