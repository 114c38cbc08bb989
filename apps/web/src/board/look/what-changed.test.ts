import type { Tile } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { markOf } from "./court-mark.ts";
import { whatChanged } from "./what-changed.ts";

interface At {
  readonly points?: number;
  readonly breaks?: readonly [number, number];
  readonly suspensions?: number;
  readonly sets?: readonly (readonly [number, number])[];
  readonly state?: Tile["state"];
  readonly chartist?: string | null;
  readonly matchId?: string | null;
  readonly winner?: "A" | "B";
}

const tileAt = (at: At): Tile =>
  ({
    courtId: "court-3",
    matchId: at.matchId === undefined ? "m1" : at.matchId,
    state: at.state ?? "playing",
    names: at.matchId === null ? null : { A: "Noor V.", B: "Elsbeth K." },
    score: { sets: at.sets ?? [], winner: at.winner ?? null, status: at.winner ? "completed" : "playing" },
    staff: {
      chartist: at.chartist === undefined ? "Ioan P." : at.chartist,
      progress: {
        points: at.points ?? 20,
        breaks: { A: at.breaks?.[0] ?? 0, B: at.breaks?.[1] ?? 0 },
        suspensions: at.suspensions ?? 0,
      },
    },
  }) as unknown as Tile;

const changed = (then: At, now: At) => whatChanged(markOf(tileAt(then)), tileAt(now)).join(", ");

describe("what changed since somebody last looked", () => {
  it("[BD45] nothing, where nothing did", () => {
    expect(changed({}, {})).toBe("");
    expect(changed({ state: "suspended", suspensions: 1 }, { state: "suspended", suspensions: 1 })).toBe("");
  });

  it("[BD45] points, breaks by whom, and sets that ended", () => {
    expect(changed({ points: 20 }, { points: 21 })).toBe("1 point");
    expect(changed({ points: 20, breaks: [1, 0] }, { points: 44, breaks: [2, 2], sets: [[4, 6]] })).toBe(
      "24 points, 1 break by Noor V., 2 breaks by Elsbeth K., first set 4–6",
    );
    expect(
      changed(
        { sets: [[6, 4]] },
        {
          points: 31,
          sets: [
            [6, 4],
            [3, 6],
          ],
        },
      ),
    ).toBe("11 points, second set 3–6");
  });

  it("[BD45] fewer points after a correction, which are no breaks", () => {
    expect(changed({ points: 20, breaks: [1, 0] }, { points: 18 })).toBe("2 points fewer, corrected");
  });

  it("[BD45] suspensions, also those that came and went", () => {
    expect(changed({}, { state: "suspended", suspensions: 1 })).toBe("suspended");
    expect(changed({ state: "suspended", suspensions: 1 }, { suspensions: 1 })).toBe("play resumed");
    expect(changed({}, { points: 24, suspensions: 1 })).toBe("4 points, suspended and resumed");
    expect(
      changed({ state: "suspended", suspensions: 1 }, { points: 22, state: "suspended", suspensions: 2 }),
    ).toBe("2 points, suspended");
  });

  it("[BD45] who charts now, and how a match ended", () => {
    expect(changed({}, { chartist: "Dana H." })).toBe("Dana H. charts");
    expect(changed({}, { chartist: null })).toBe("");
    expect(
      changed(
        { sets: [[6, 4]] },
        {
          points: 29,
          state: "over",
          winner: "A",
          sets: [
            [6, 4],
            [6, 1],
          ],
        },
      ),
    ).toBe("9 points, second set 6–1, Noor V. won");
  });

  it("[BD45] another match on the court, with what has happened in it", () => {
    expect(changed({ points: 90 }, { matchId: "m2", points: 3 })).toBe(
      "now Noor V. – Elsbeth K., 3 points, Ioan P. charts",
    );
    expect(changed({}, { matchId: null, state: "empty" })).toBe("no match any more");
    expect(whatChanged(undefined, tileAt({}))).toEqual(["new on the board"]);
  });
});
