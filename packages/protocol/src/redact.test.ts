import type { LoggedEntry, UsualRate } from "@courtloom/match-log";
import { openedWith } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { redactEntries, redactOpening } from "./redact.ts";

const rate: UsualRate = { mean: 0.3, low: 0.1, high: 0.5, a: 6, b: 14, source: "own" };
const opened = openedWith({
  matchId: "m1",
  usualRates: { A: { lineMissed: rate }, B: {} },
  planVersion: "plan-7",
  fitVersion: "fit-2",
});
const opening: LoggedEntry = {
  pos: 1,
  laneId: "desk",
  epoch: 0,
  entry: { v: 1, id: "00000000-0000-4000-8000-000000000001", n: 1, atMs: 0, wallMs: 5, body: opened },
};
const replayed: LoggedEntry = {
  ...opening,
  pos: 2,
  entry: { ...opening.entry, n: 2, body: { kind: "PointReplayed" } },
};

describe("what a helper's phone receives", () => {
  it("[PR4] has no usual rate, plan, fit or watch, and the same score", () => {
    const { usualRates: _, ...rest } = opened;
    expect(redactOpening(opening)).toEqual({
      ...opening,
      entry: { ...opening.entry, body: { ...rest, planVersion: null, fitVersion: null } },
    });
    expect(JSON.stringify(redactEntries([opening, replayed]))).not.toMatch(/usualRates|mean|plan-7|fit-2/);
  });

  it("[PR4] keeps what the pad asks, which is neutral", () => {
    const asks = { line: ["ballHeight"], short: ["cameIn"] } as const;
    const asking = { ...opening, entry: { ...opening.entry, body: { ...opened, asks } } };
    expect(redactOpening(asking).entry.body).toMatchObject({ asks });
  });

  it("[PR4] leaves every other entry, and the given opening, as they were", () => {
    const before = structuredClone(opening);
    const hidden = redactEntries([opening, replayed]);
    expect(hidden[1]).toBe(replayed);
    expect(opening).toEqual(before);
    const later = [replayed];
    expect(redactEntries(later)).toBe(later);
    expect(redactEntries([])).toEqual([]);
  });
});
