import { SIDES } from "@courtloom/core";
import { CHARTING_LEVELS, type EntryBody, type MatchView, type Shot } from "@courtloom/match-log";
import { idAt } from "@courtloom/match-log/testing";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spotOf } from "../balls/strokes.ts";
import { figuresOf } from "../figures/figures-of.ts";
import { FIGURE_NAMES } from "../figures/registry.ts";
import { DEUCE_CORNER, drawn, LEFT_DEEP, RIGHT_DEEP, touch } from "../testing/drawn.ts";
import { every, key, matchWith } from "../testing/match-with.ts";
import { addTallies, sumTallies } from "./add-tallies.ts";
import { cellKey, parseCellKey } from "./cell-key.ts";
import { readTally } from "./read-tally.ts";
import { talliesOf } from "./tallies-of.ts";
import { EMPTY_TALLY, type Tally } from "./tally.ts";
import { tallyCells, tallyCount } from "./tally-count.ts";

const SEED = 20261125;
const place = fc.record({ x: fc.integer({ min: -4, max: 4 }), y: fc.integer({ min: -13, max: -2 }) });
const target = fc.record({ x: fc.integer({ min: -5, max: 5 }), y: fc.integer({ min: 2, max: 13 }) });
const answers = fc.record(
  {
    ballHeight: fc.constantFrom("low", "netHigh", "sitsUp", "jumps"),
    ballTime: fc.constantFrom("set", "hurried"),
    opponent: fc.constantFrom("set", "wideLeft"),
    cameIn: fc.boolean(),
    hesitated: fc.boolean(),
    result: fc.constantFrom("winner", "missed", "in"),
    leftOut: fc.constantFrom("netCord"),
  },
  { requiredKeys: [] },
);
const shot: fc.Arbitrary<Shot> = fc.oneof(
  fc.tuple(fc.constantFrom(...SIDES), place, target, answers).map((parts) => drawn(...parts)),
  fc.tuple(fc.constantFrom(...SIDES), place, answers).map((parts) => touch(...parts)),
);
const point: fc.Arbitrary<EntryBody> = fc
  .record({
    winner: fc.constantFrom(...SIDES),
    level: fc.constantFrom(...CHARTING_LEVELS),
    shots: fc.array(shot, { maxLength: 6 }),
    satUpKept: fc.integer({ min: 0, max: 2 }),
  })
  .map(({ winner, shots, ...more }) => key(winner, shots, more));
const match = fc.array(point, { maxLength: 12 }).map((points) => matchWith(points));

const tallyOf = (view: MatchView): Tally => talliesOf(view).A ?? EMPTY_TALLY;
const tally = match.map(tallyOf);
const same = (a: Tally, b: Tally) => expect(JSON.stringify(a)).toBe(JSON.stringify(b));

describe("tallies", () => {
  it("[D38] add up in any order and grouping, and adding nothing changes nothing", () => {
    fc.assert(
      fc.property(tally, tally, tally, (a, b, c) => {
        same(addTallies(a, b), addTallies(b, a));
        same(addTallies(addTallies(a, b), c), addTallies(a, addTallies(b, c)));
        same(addTallies(a, EMPTY_TALLY), a);
        same(sumTallies([a, b, c]), addTallies(a, addTallies(b, c)));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it("[D38] a match's is the sum of its points'", () => {
    fc.assert(
      fc.property(match, (view) => {
        const ofPoints = view.points.map((each) => tallyOf({ ...view, points: [each] }));
        same(tallyOf(view), sumTallies(ofPoints));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it("[D39] say what the figures say, whole and by part", () => {
    fc.assert(
      fc.property(match, (view) => {
        const mine = figuresOf(view).A;
        for (const name of FIGURE_NAMES) {
          const { x, n } = mine?.[name] ?? {};
          expect([name, tallyCount(tallyOf(view), name)]).toEqual([name, { x, n }]);
          for (const [part, of] of Object.entries(mine?.parts[name] ?? {})) {
            const told = tallyCount(tallyOf(view), name, { part });
            expect([name, part, told]).toEqual([name, part, { x: of.x, n: of.n }]);
          }
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it("[D6, D38] of a corrected log are those of a log charted right", () => {
    const right = every("A", [drawn("B", DEUCE_CORNER, LEFT_DEEP), drawn("A", DEUCE_CORNER, RIGHT_DEEP)]);
    if (right.kind !== "PointCharted") throw new Error("a point");
    const wrong = key("B", [touch("A", DEUCE_CORNER)]);
    const mended = matchWith([wrong, { kind: "EntryAmended", target: idAt(2), to: right }]);
    expect(talliesOf(mended)).toEqual(talliesOf(matchWith([right])));
    const voided = matchWith([right, wrong, { kind: "EntryVoided", target: idAt(3) }]);
    expect(talliesOf(voided)).toEqual(talliesOf(matchWith([right])));
  });

  it("[D7, D38, D39] hold counts alone, keep levels apart, and read one of them alone", () => {
    const missed = drawn("A", DEUCE_CORNER, { x: 2.8, y: 13.2 }, { result: "missed" });
    const held = tallyOf(matchWith([key("B", [missed]), every("A", [drawn("A", DEUCE_CORNER, RIGHT_DEEP)])]));
    expect(tallyCount(held, "lineMissed")).toEqual({ x: 1, n: 2 });
    expect(tallyCount(held, "lineMissed", { levels: ["key"] })).toEqual({ x: 1, n: 1 });
    expect(tallyCount(held, "rallyLength", { levels: ["key"] })).toEqual({ x: 0, n: 0 });
    expect(tallyCells(held, "key")).toEqual([
      {
        of: { depth: "behindBaseline", side: "right", landing: undefined, choice: "line" },
        cell: [1, 1, 0, 1, 1, 0],
      },
    ]);
  });

  it("[D36] a cell's key tells what it is about, and only a key does", () => {
    const of = { depth: "insideServiceLine", side: "left", landing: "deep", choice: "fromMiddle" } as const;
    expect(parseCellKey(cellKey(of))).toEqual(of);
    expect(spotOf(of)).toBe("insideServiceLine.left");
    for (const key of ["", "BLd", "BLdlx", "XLdl", "BLxl"]) expect(parseCellKey(key)).toBeUndefined();
  });

  it("[D38] stay small", () => {
    fc.assert(
      fc.property(match, (view) => {
        expect(JSON.stringify(tallyOf(view)).length).toBeLessThan(6000);
      }),
      { seed: SEED, numRuns: 20 },
    );
  });
});

describe("a tally that was written", () => {
  it("[D40] is read as it was, with names that this version does not know", () => {
    fc.assert(
      fc.property(tally, (written) => {
        expect(readTally(JSON.parse(JSON.stringify(written)))).toEqual({ ok: true, value: written });
      }),
      { seed: SEED, numRuns: 40 },
    );
    const later = { version: 2, levels: { key: { counts: { notYet: [1, 2] }, cells: {} } } };
    expect(readTally(later)).toEqual({ ok: true, value: later });
  });

  it("[D40] of version 1 is of an unknown level", () => {
    const read = readTally({ version: 1, lineMissed: { x: 2, n: 5 }, lineShare: { x: 5, n: 20 } });
    expect(read).toEqual({
      ok: true,
      value: {
        version: 2,
        levels: { unknown: { counts: { lineMissed: [2, 5], lineShare: [5, 20] }, cells: {} } },
      },
    });
    if (!read.ok) return;
    expect(tallyCount(read.value, "lineMissed")).toEqual({ x: 2, n: 5 });
    expect(tallyCount(read.value, "lineMissed", { levels: ["key", "every"] })).toEqual({ x: 0, n: 0 });
    expect(readTally({ version: 1, lineMissed: { x: 0, n: 0 }, lineShare: { x: 0, n: 0 } })).toEqual({
      ok: true,
      value: EMPTY_TALLY,
    });
  });

  it.each([
    ["not_tally", null],
    ["not_tally", { version: 0 }],
    ["not_tally", { version: 1, lineMissed: { x: 3, n: 2 }, lineShare: { x: 0, n: 0 } }],
    ["not_tally", { version: 2 }],
    ["not_tally", { version: 2, levels: { key: { counts: { lineMissed: [1] }, cells: {} } } }],
    ["not_tally", { version: 2, levels: { key: { counts: {}, cells: { BLdl: [1, 2, 3, 4, 5, -6] } } } }],
    ["newer_version", { version: 3, levels: {} }],
  ] as const)("[D40] else says %s of %o", (error, raw) => {
    expect(readTally(raw)).toEqual({ ok: false, error });
  });
});
