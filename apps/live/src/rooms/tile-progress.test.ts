import { type EntryBody, foldLog } from "@courtloom/match-log";
import { makeLog, pointsOf, THREE_SETS } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { tileProgressOf } from "./tile-progress.ts";

const progressAfter = (...bodies: readonly EntryBody[]) => {
  const view = foldLog(makeLog(bodies));
  if (!view.ok) throw new Error(view.error);
  expect(view.value.opened.format).toEqual(THREE_SETS);
  return tileProgressOf(view.value);
};

describe("how much of a match was played", () => {
  it("[LV52] counts points, games won against the server, and suspensions", () => {
    expect(progressAfter()).toEqual({ points: 0, breaks: { A: 0, B: 0 }, suspensions: 0 });
    // A serves first: B breaks, then A breaks back, then A holds.
    const games = pointsOf("BBBBAAAAAAAA");
    expect(
      progressAfter(...games, { kind: "PlaySuspended", reason: "rain" }, { kind: "PlayResumed" }),
    ).toEqual({
      points: 12,
      breaks: { A: 1, B: 1 },
      suspensions: 1,
    });
  });

  it("[LV52] counts the break that ends a set, and none in a tie-break", () => {
    // A holds, B is broken, and so on: 6-0 with three breaks.
    expect(progressAfter(...pointsOf("AAAA".repeat(6))).breaks).toEqual({ A: 3, B: 0 });
    const toSixAll = "AAAABBBB".repeat(6);
    expect(progressAfter(...pointsOf(`${toSixAll}AAAAAAA`)).breaks).toEqual({ A: 0, B: 0 });
  });
});
