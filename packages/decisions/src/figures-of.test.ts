import type { Side } from "@courtloom/core";
import { type EntryBody, foldLog, type Shot } from "@courtloom/match-log";
import { idAt, makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";
import { seenFrom } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import type { MatchFigures } from "./figures.ts";
import { figuresOf } from "./figures-of.ts";

const SERVE = { outcome: "firstIn", faults: 0 } as const;
/** Striker-relative corners, metres: own deuce corner, own ad corner, and their targets. */
const DEUCE = { x: 3, y: -12 };
const AD = { x: -3, y: -12 };
const LEFT = { x: -2.8, y: 9 };
const RIGHT = { x: 2.8, y: 9 };

const stroke = (
  striker: Side,
  from: { x: number; y: number },
  to: { x: number; y: number },
  more: Partial<Shot> = {},
): Shot => ({ striker, ...seenFrom({ from, to }, { seat: "behind", endOfA: "near", striker }), ...more });

const every = (winner: Side, ...shots: Shot[]): EntryBody =>
  pointTo(winner, { level: "every", serve: SERVE, shots });

const figures = (bodies: readonly EntryBody[], opened = openedWith()): MatchFigures => {
  const view = foldLog(makeLog(bodies, opened));
  if (!view.ok) throw new Error(view.error);
  return figuresOf(view.value);
};

/** B returns cross-court from the deuce corner, so that A's next ball comes from A's deuce corner. */
const returned = stroke("B", DEUCE, LEFT);
const lineIn = stroke("A", DEUCE, RIGHT, { result: "winner" });
const lineLong = stroke("A", DEUCE, { x: 2.8, y: 13.2 }, { result: "missed", miss: "long" });
const lineNet = stroke("A", DEUCE, { x: 2.9, y: -0.2 }, { result: "missed", miss: "net" });
const crossIn = stroke("A", DEUCE, LEFT, { result: "winner" });
const fromMiddle = stroke("A", { x: 0, y: -12 }, RIGHT, { result: "winner" });

describe("figures of a match", () => {
  it("[D3] counts line balls among own groundstrokes and those that ended net, wide or long", () => {
    const f = figures([
      every("A", returned, lineIn),
      every("B", returned, lineLong),
      every("A", returned, crossIn),
      every("B", returned, lineNet),
    ]);
    expect(f.A?.lineMissed).toEqual({ x: 2, n: 3, hits: [idAt(3), idAt(5)], others: [idAt(2)] });
    expect(f.A?.lineShare).toMatchObject({ x: 3, n: 4 });
  });

  it("[D3] a ball from the middle never counts as down the line", () => {
    expect(figures([every("A", returned, fromMiddle)]).A).toMatchObject({
      lineMissed: { n: 0 },
      lineShare: { x: 0, n: 1 },
    });
  });

  it("[D3] returns, volleys and what a person called otherwise are not groundstrokes", () => {
    const asReturn = pointTo("A", {
      level: "every",
      serve: SERVE,
      shots: [stroke("A", DEUCE, RIGHT, { result: "winner" })],
    });
    const lob = { ...lineIn, kind: "lob" } as const;
    expect(figures([asReturn, every("A", returned, lob)]).A?.lineShare.n).toBe(0);
  });

  it("[D4] leaves out what the net cord or a disputed call decided", () => {
    const disputed = { ...lineLong, leftOut: "calledOut" } as const;
    expect(figures([every("B", returned, disputed)]).A?.lineShare.n).toBe(0);
  });

  it("[D2] a point charted as score only feeds nothing", () => {
    expect(figures([pointTo("A", { serve: SERVE, shots: [returned, lineIn] })]).A?.lineShare.n).toBe(0);
  });

  it("[D5] only charted own players have figures", () => {
    const f = figures([every("A", returned, lineIn)]);
    expect(f.B).toBeUndefined();
    expect(figures([every("A", returned, lineIn)], openedWith({ subjects: [] })).A).toBeUndefined();
  });

  it("[D1] ends mended later change what follows from them", () => {
    const seenFar = (striker: Side, from: typeof AD, to: typeof AD): Shot => ({
      striker,
      ...seenFrom({ from, to }, { seat: "behind", endOfA: "far", striker }),
    });
    const drawn = every("A", seenFar("B", DEUCE, RIGHT), { ...seenFar("A", AD, LEFT), result: "winner" });
    expect(figures([drawn]).A?.lineShare.n).toBe(0);
    const mended = figures([drawn, { kind: "EndsStated", endOfA: "far", since: idAt(2) }]);
    expect(mended.A?.lineMissed).toEqual({ x: 0, n: 1, hits: [], others: [idAt(2)] });
  });

  it("[D6] a correction leaves the figures of a match charted right the first time", () => {
    const right = figures([every("A", returned, crossIn)]);
    const mended = figures([
      every("B", returned, lineLong),
      {
        kind: "EntryAmended",
        target: idAt(2),
        to: every("A", returned, crossIn) as Extract<EntryBody, { kind: "PointCharted" }>,
      },
    ]);
    expect(mended).toEqual(right);
  });
});
