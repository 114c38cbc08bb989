import type { EntryBody, MatchOpened, Shot } from "@courtloom/match-log";
import { idAt } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { AD_CORNER, DEUCE_CORNER, drawn, LEFT_DEEP, RIGHT_DEEP, touch } from "../testing/drawn.ts";
import { every, key, matchWith } from "../testing/match-with.ts";
import { attemptsOf } from "./attempts-of.ts";
import type { PlayerFigures } from "./figures.ts";
import { figuresOf } from "./figures-of.ts";
import { FIGURE_NAMES, type FigureName } from "./registry.ts";

const figures = (bodies: readonly EntryBody[], opened: Partial<MatchOpened> = {}): PlayerFigures => {
  const mine = figuresOf(matchWith(bodies, opened)).A;
  if (!mine) throw new Error("side A is charted");
  return mine;
};
const xOfN = (mine: PlayerFigures, ...names: FigureName[]) =>
  names.map((name) => [mine[name].x, mine[name].n]);
const parts = (mine: PlayerFigures, name: FigureName) =>
  Object.fromEntries(Object.entries(mine.parts[name] ?? {}).map(([part, { x, n }]) => [part, [x, n]]));

const LONG = { x: 2.8, y: 13.2 };
const SHORT_RIGHT = { x: 3, y: -5 };
const line = (more: Partial<Shot> = {}) => drawn("A", DEUCE_CORNER, RIGHT_DEEP, more);
const lineLong = (more: Partial<Shot> = {}) => drawn("A", DEUCE_CORNER, LONG, { result: "missed", ...more });
const cross = (more: Partial<Shot> = {}) => drawn("A", DEUCE_CORNER, LEFT_DEEP, more);
const kept = (more: Partial<Shot> = {}) => touch("A", DEUCE_CORNER, more);
const returned = drawn("B", DEUCE_CORNER, LEFT_DEEP);
const ON = { ballHeight: "sitsUp" } as const;
const OFF = { ballHeight: "low", opponent: "set" } as const;

describe("figures of balls", () => {
  it("[D22] kept balls missed, and cross-court apart from middle where it was drawn", () => {
    const out = cross({ result: "missed", miss: "wide" });
    const middle = drawn("A", AD_CORNER, { x: 0, y: 9 });
    const mine = figures([
      key("B", [kept(), out]),
      every("A", [returned, kept(), returned, middle, returned, cross()]),
    ]);
    expect(xOfN(mine, "keptMissed", "crossShare")).toEqual([
      [1, 5],
      [1, 2],
    ]);
    expect(parts(mine, "keptMissed")).toEqual({
      "behindBaseline.right": [1, 4],
      "behindBaseline.left": [0, 1],
    });
    expect(mine.keptMissed.hits).toEqual([idAt(2)]);
  });

  it("[D23] line balls that hurt, of those whose result is known", () => {
    const results = [{ result: "winner" }, { result: "weak" }, { result: "in" }, {}] as const;
    const mine = figures([key("B", [lineLong()]), ...results.map((more) => key("A", [line(more)]))]);
    expect(xOfN(mine, "lineHurt", "lineMissed")).toEqual([
      [2, 4],
      [1, 5],
    ]);
  });

  it("[D24] change of direction only where the incoming ball was drawn", () => {
    const mine = figures([every("A", [returned, line(), returned, cross()]), key("A", [line()])]);
    expect(xOfN(mine, "directionChanged")).toEqual([[1, 2]]);
  });

  it("[D25, D26] verdicts of line balls, and the four counts of balls judged right or wrong", () => {
    const mine = figures([
      key("A", [line(ON)]),
      key("B", [lineLong(ON)]),
      key("A", [line(OFF)]),
      key("B", [lineLong(OFF)]),
      key("B", [lineLong(OFF)]),
      key("A", [line()]),
      key("A", [kept(ON), kept(), cross(OFF)]),
    ]);
    expect(xOfN(mine, "lineOffPlan", "lineMissedOffPlan", "planKept")).toEqual([
      [3, 5],
      [2, 3],
      [3, 7],
    ]);
    expect(xOfN(mine, "rightMade", "rightMissed", "wrongMade", "wrongMissed")).toEqual([
      [2, 6],
      [1, 6],
      [1, 6],
      [2, 6],
    ]);
  });

  it("[D13] without a plan nothing is judged", () => {
    const mine = figures([key("A", [line(OFF)], { satUpKept: 2 })], { plans: { A: null, B: null } });
    expect(xOfN(mine, "lineOffPlan", "planKept", "passedUp")).toEqual([
      [0, 0],
      [0, 0],
      [0, 0],
    ]);
    expect(mine.targets).toEqual([]);
  });

  it("[D31] hesitated and came in, of balls where somebody answered", () => {
    const approach = line({ kind: "approach" });
    const mine = figures([
      key("A", [line({ hesitated: true, cameIn: false }), kept({ hesitated: false }), approach]),
    ]);
    expect(xOfN(mine, "hesitated", "cameIn")).toEqual([
      [1, 2],
      [1, 2],
    ]);
  });

  it("[D34] other kinds missed, each by itself, at every ball", () => {
    const volley = drawn("A", { x: 1, y: -2 }, LONG, { kind: "volley", result: "missed" });
    const mine = figures([
      every("B", [returned, cross({ kind: "lob" }), returned, volley]),
      key("B", [volley]),
    ]);
    expect(xOfN(mine, "otherMissed")).toEqual([[1, 2]]);
    expect(parts(mine, "otherMissed")).toEqual({ lob: [0, 1], volley: [1, 1] });
  });
});

describe("short balls", () => {
  const short = (to: { x: number; y: number }, more: Partial<Shot>) => drawn("A", SHORT_RIGHT, to, more);

  it("[D27] low and high: down the line, came in, missed, and the points won by the first of a point", () => {
    const low = { ballHeight: "low" } as const;
    const mine = figures([
      key("A", [
        short(RIGHT_DEEP, { ...low, cameIn: true }),
        short(LEFT_DEEP, { ...low, kind: "groundstroke", cameIn: false }),
      ]),
      key("B", [short(LONG, { ...low, result: "missed" })]),
      key("A", [short(LEFT_DEEP, { ballHeight: "jumps" })]),
      key("A", [short(LEFT_DEEP, { kind: "volley", ballHeight: "low" })]),
      key("A", [short(LEFT_DEEP, {})]),
    ]);
    expect(xOfN(mine, "shortLowLine", "shortLowCameIn", "shortLowMissed", "shortLowWon")).toEqual([
      [2, 3],
      [1, 2],
      [1, 3],
      [1, 2],
    ]);
    expect(parts(mine, "shortLowWon")).toEqual({ "right.line.in": [1, 1], "right.line.unknown": [0, 1] });
    expect(parts(mine, "shortLowMissed")).toEqual({ "right.line": [1, 2], "right.cross": [0, 1] });
    expect(xOfN(mine, "shortHighLine", "shortHighCameIn", "shortHighMissed", "shortHighWon")).toEqual([
      [0, 1],
      [0, 0],
      [0, 1],
      [1, 1],
    ]);
  });
});

describe("moments", () => {
  it("[D28] taken and passed up, counted chances among them, none twice", () => {
    const mine = figures([
      key("A", [line(ON)]),
      key("A", [kept(ON), line(OFF)], { satUpKept: 2 }),
      key("A", [kept()], { satUpKept: 1 }),
      every("A", [returned, cross({ opponent: "wideLeft" })], { satUpKept: 5 }),
    ]);
    expect(xOfN(mine, "agreedTaken", "passedUp")).toEqual([
      [1, 5],
      [4, 5],
    ]);
    expect(mine.passedUp.hits).toEqual([idAt(3), idAt(3), idAt(4), idAt(5)]);
  });

  it("[D28] at key balls a chance taken counts only where one passed up would be told too", () => {
    const wide = line({ opponent: "wideLeft" });
    expect(xOfN(figures([key("A", [wide])]), "agreedTaken", "lineOffPlan")).toEqual([
      [0, 0],
      [0, 1],
    ]);
    expect(xOfN(figures([every("A", [returned, wide])]), "agreedTaken")).toEqual([[1, 1]]);
    const inside = { id: "i", when: {}, aim: "keep", lineOn: [{ side: ["right"] }], targets: [] } as const;
    const byPlace = { plans: { A: { planId: "q", version: 1, rules: [inside] }, B: null } };
    const mine = figures([key("A", [line(), kept()], { satUpKept: 3 })], byPlace);
    expect(xOfN(mine, "agreedTaken")).toEqual([[1, 2]]);
  });
});

describe("figures of points", () => {
  it("[D29, D30] built up before the first line ball, and points with none", () => {
    const mine = figures([
      key("A", [kept(), kept(), line(), line()]),
      key("B", [lineLong()]),
      key("A", [...Array.from({ length: 6 }, () => kept()), line()]),
      key("B", [kept(), kept()]),
      key("A", []),
    ]);
    expect(xOfN(mine, "builtUp", "keptWon")).toEqual([
      [2, 3],
      [0, 1],
    ]);
    expect(parts(mine, "builtUp")).toEqual({ "0": [0, 1], "2": [1, 1], "5+": [1, 1] });
  });

  it("[D2, D32] serve and return at any level, where the serve was told", () => {
    const serve = (
      winner: "A" | "B",
      outcome: "firstIn" | "secondIn" | "ace" | "doubleFault",
      faults: 0 | 1 | 2,
    ) => key(winner, [], { level: "score", serve: { outcome, faults } });
    const untold = { kind: "PointCharted", point: { ...pointOf(key("A", [])), level: "score" } } as const;
    const { serve: _, ...bare } = untold.point;
    const games = [
      serve("A", "ace", 0),
      serve("A", "secondIn", 1),
      serve("B", "doubleFault", 2),
      serve("B", "firstIn", 0),
      { kind: "PointCharted", point: bare } as const,
      serve("A", "ace", 1),
    ];
    const mine = figures(games);
    expect(xOfN(mine, "firstServeIn", "wonOnFirst", "wonOnSecond", "aces", "doubleFaults")).toEqual([
      [2, 5],
      [1, 2],
      [2, 3],
      [2, 5],
      [1, 5],
    ]);
    const received = figures([serve("A", "firstIn", 0), serve("A", "secondIn", 1)], { firstServer: "B" });
    expect(xOfN(received, "returnWon", "firstServeIn")).toEqual([
      [2, 2],
      [0, 0],
    ]);
    expect(parts(received, "returnWon")).toEqual({ first: [1, 1], second: [1, 1] });
  });

  it("[D33] rally length with the serve counted, at every ball", () => {
    const shots = Array.from({ length: 4 }, (_, i) => (i % 2 ? cross() : returned));
    const mine = figures([
      every("A", [], { serve: { outcome: "ace", faults: 0 } }),
      every("B", shots),
      key("A", [line()]),
      { kind: "PointCharted", point: withoutServe(every("A", [])) },
    ]);
    expect(xOfN(mine, "rallyLength")).toEqual([[1, 2]]);
    expect(parts(mine, "rallyLength")).toEqual({ opening: [1, 1], building: [0, 1] });
  });

  it("[D43] what the net cord or a disputed call decided is in no figure of points won", () => {
    const mine = figures([key("A", [kept(), line({ leftOut: "netCord", result: "winner" })])]);
    expect(xOfN(mine, "keptWon", "builtUp", "wonOnFirst", "keptMissed", "firstServeIn")).toEqual([
      [0, 0],
      [0, 0],
      [0, 0],
      [0, 1],
      [1, 1],
    ]);
    expect(mine.cells).toMatchObject([{ n: 1, won: [], lost: [] }]);
  });
});

describe("a plan's targets and the cells", () => {
  it("[D35] a target counts balls whose rule the place tells, or that are short", () => {
    const mine = figures([
      key("A", [kept(), kept(), line(), drawn("A", SHORT_RIGHT, RIGHT_DEEP, { ballHeight: "low" })]),
    ]);
    expect(mine.targets.map(({ ruleId, count: { x, n } }) => [ruleId, x, n])).toEqual([
      ["short-low", 1, 1],
      ["behind-baseline", 2, 3],
    ]);
  });

  it("[D35] leaves out a rule that only asked balls are known to be of, and a touch of cross or middle", () => {
    const target = (choice: "line" | "cross") =>
      ({ choice, wants: "atMost", share: 0.3, tolerance: 0.05 }) as const;
    const rules = [
      { id: "up", when: { ballHeight: ["sitsUp"] }, aim: "keep", lineOn: [], targets: [target("line")] },
      { id: "rest", when: {}, aim: "keep", lineOn: [], targets: [target("cross")] },
    ] as const;
    const opened = (from: number) => ({
      plans: { A: { planId: "q", version: 1, rules: rules.slice(from) }, B: null },
    });
    const charted = [
      key("A", [line(ON), kept(), line(OFF)]),
      every("A", [returned, cross(), returned, kept()]),
    ];
    expect(figures(charted, opened(0)).targets.map(({ count: { n } }) => n)).toEqual([0, 0]);
    expect(figures(charted, opened(1)).targets.map(({ count: { x, n } }) => [x, n])).toEqual([[1, 1]]);
  });

  it("[D36] cells hold what followed a choice in a situation, each level by itself", () => {
    const mine = figures([every("A", [returned, line(OFF), returned, line()]), key("B", [lineLong(OFF)])]);
    expect(mine.cells).toEqual([
      {
        level: "every",
        depth: "behindBaseline",
        side: "right",
        landing: "mid",
        choice: "line",
        n: 2,
        points: 1,
        missed: [],
        won: [idAt(2), idAt(2)],
        lost: [],
        against: [idAt(2)],
      },
      expect.objectContaining({ level: "key", landing: undefined, n: 1, lost: [idAt(3)], missed: [idAt(3)] }),
    ]);
  });

  it("[D37] the attempts of each figure add up to it, with what was off plan", () => {
    const view = matchWith([
      key("A", [kept(), line(OFF)], { satUpKept: 2 }),
      every("B", [returned, cross(ON), returned, lineLong(ON)]),
    ]);
    const mine = figuresOf(view).A;
    for (const name of FIGURE_NAMES) {
      const attempts = attemptsOf(view, "A", name);
      expect([name, attempts.filter(({ event }) => event).length, attempts.length]).toEqual([
        name,
        mine?.[name].x,
        mine?.[name].n,
      ]);
    }
    expect(attemptsOf(view, "A", "lineMissed")).toEqual([
      { at: 0, event: false, offPlan: true },
      { at: 1, event: true, offPlan: false },
    ]);
    expect(attemptsOf(view, "B", "lineMissed")).toEqual([]);
  });
});

function pointOf(body: EntryBody) {
  if (body.kind !== "PointCharted") throw new Error("a point");
  return body.point;
}

function withoutServe(body: EntryBody) {
  const { serve: _, ...rest } = pointOf(body);
  return rest;
}
