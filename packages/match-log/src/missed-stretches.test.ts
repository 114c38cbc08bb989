import { describe, expect, it } from "vitest";
import type { EntryBody } from "./entry.ts";
import { foldLog } from "./fold.ts";
import { missedStretches } from "./missed-stretches.ts";
import { idAt, makeLog, pointsOf } from "./testing/make-log.ts";

const stretches = (bodies: readonly EntryBody[]) => {
  const view = foldLog(makeLog(bodies));
  if (!view.ok) throw new Error(view.error);
  return missedStretches(view.value);
};

const stated = (games: [number, number], points: [number, number], missed = true): EntryBody => ({
  kind: "ScoreStated",
  score: { games, points },
  missed,
});

describe("missed stretches", () => {
  it("[L30] lie between the points around them and have the fewest points that the score allows", () => {
    expect(stretches([...pointsOf("AAB"), stated([1, 1], [1, 0]), ...pointsOf("A")])).toEqual([
      { beforePoint: 3, atLeast: 2 + 4 + 1 },
    ]);
    expect(stretches([...pointsOf("A"), stated([0, 0], [3, 1])])).toEqual([{ beforePoint: 1, atLeast: 3 }]);
  });

  it("[L30] may come before the first point and after the last", () => {
    expect(stretches([stated([3, 0], [0, 0]), ...pointsOf("A")])).toEqual([{ beforePoint: 0, atLeast: 12 }]);
    expect(stretches([])).toEqual([]);
  });

  it("[L30] are none where the players' score was put right, was voided, or could not be", () => {
    expect(stretches([...pointsOf("AA"), stated([0, 0], [1, 1], false)])).toEqual([]);
    expect(
      stretches([...pointsOf("A"), stated([2, 0], [0, 0]), { kind: "EntryVoided", target: idAt(3) }]),
    ).toEqual([]);
    expect(stretches([...pointsOf("A"), stated([-1, 0], [0, 0])])).toEqual([]);
  });

  it("[L30] count nothing for a score that is not later", () => {
    expect(stretches([...pointsOf("AAAAA"), stated([0, 0], [0, 0])])).toEqual([
      { beforePoint: 5, atLeast: 0 },
    ]);
  });
});
