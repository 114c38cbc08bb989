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
  players: {
    A: { playerId: "noor", hand: "right", own: true, level: 41 },
    B: { playerId: "kaito", hand: "left", own: false, level: 43 },
  },
  plans: {
    A: {
      planId: "plan-7",
      version: 2,
      rules: [{ id: "r1", when: {}, aim: "keep", lineOn: [], targets: [] }],
    },
    B: null,
  },
  watches: [
    {
      side: "A",
      rate: "lineMissed",
      version: 1,
      usual: 0.3,
      source: "own",
      up: 55,
      down: 37,
      horizon: 40,
      red: { first: 325, late: 360 },
      amber: { first: 269, late: 300 },
      alpha: 0.05,
    },
  ],
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
  it("[PR4] has no usual rate, level, plan, fit or watch, and the same score", () => {
    const { usualRates: _rates, plans: _plans, ...rest } = opened;
    const players = {
      A: { playerId: "noor", hand: "right", own: true },
      B: { playerId: "kaito", hand: "left", own: false },
    };
    expect(redactOpening(opening)).toEqual({
      ...opening,
      entry: {
        ...opening.entry,
        body: { ...rest, players, planVersion: null, fitVersion: null, watches: [] },
      },
    });
    expect(JSON.stringify(redactEntries([opening, replayed]))).not.toMatch(
      /usual|mean|plan-7|fit-2|lineMissed|lineOn|"level"|41/,
    );
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
