import { figuresOf } from "@courtloom/decisions";
import { describe, expect, it } from "vitest";
import { filterShots, shotsBehind, shotsOf } from "./court-shots.ts";
import { courtTrial } from "./court-trial.ts";

describe("shots of a court", () => {
  const view = courtTrial().view;
  const shots = shotsOf(view);

  it("[BD12] lists behind a figure exactly the balls that it counts", () => {
    const figures = figuresOf(view).A;
    expect(figures?.lineMissed.n).toBeGreaterThan(0);
    for (const figure of ["lineMissed", "lineShare"] as const) {
      const behind = shotsBehind(shots, { side: "A", figure });
      const ids = [...(figures?.[figure].hits ?? []), ...(figures?.[figure].others ?? [])];
      expect(behind.map((shot) => shot.pointId).sort()).toEqual(ids.sort());
    }
    expect(
      shotsBehind(shots, { side: "A", figure: "lineMissed" }).filter((shot) => shot.missed),
    ).toHaveLength(figures?.lineMissed.x ?? -1);
  });

  it("[BD12] filters by player, direction and result", () => {
    const any = { side: "both", direction: "all", missedOnly: false } as const;
    expect(filterShots(shots, any)).toEqual(shots);
    const line = filterShots(shots, { ...any, direction: "line" });
    expect(line.length).toBeGreaterThan(0);
    expect(line.every((shot) => shot.direction === "line")).toBe(true);
    expect(filterShots(shots, { ...any, missedOnly: true }).every((shot) => shot.missed)).toBe(true);
    expect(filterShots(shots, { ...any, side: "B" }).every((shot) => shot.side === "B")).toBe(true);
  });

  it("[BD11] draws every shot from its striker's end, whoever struck it and wherever the chartist sat", () => {
    const own = shots.filter((shot) => shot.to !== undefined);
    expect(own.every((shot) => shot.from.y < 0)).toBe(true);
  });
});
