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

const key = (winner: Side, ...shots: Shot[]): EntryBody =>
  pointTo(winner, { level: "key", serve: SERVE, shots });

const figures = (bodies: readonly EntryBody[], opened = openedWith()): MatchFigures => {
  const view = foldLog(makeLog(bodies, opened));
  if (!view.ok) throw new Error(view.error);
  return figuresOf(view.value);
};

/** B returns cross-court from the deuce corner, so that A's next ball comes from A's deuce corner. */
const returned = stroke("B", DEUCE, LEFT);
const kept = stroke("A", DEUCE, LEFT);
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
    const asReturn = every("A", stroke("A", DEUCE, RIGHT, { result: "winner" }));
    const lob = { ...lineIn, kind: "lob" } as const;
    const receiving = openedWith({ firstServer: "B" });
    expect(figures([asReturn, every("A", returned, lob)], receiving).A?.lineShare.n).toBe(0);
  });

  it("[D9] the first ball charted is a return when the receiver struck it, also of a serve that nobody told", () => {
    const untold = pointTo("A", { level: "key", shots: [lineIn] });
    expect(figures([untold], openedWith({ firstServer: "B" })).A?.lineShare.n).toBe(0);
    expect(figures([untold]).A?.lineMissed).toMatchObject({ x: 0, n: 1 });
    expect(figures([key("B", lineLong)]).A?.lineMissed).toMatchObject({ x: 1, n: 1 });
  });

  it("[D9] a ball answers the one charted just before it, never an older one", () => {
    const atNet = stroke("B", { x: 1, y: -3 }, LEFT);
    expect(figures([every("A", atNet, lineIn)]).A?.lineMissed.n).toBe(0);
    expect(figures([every("A", atNet, stroke("A", DEUCE, LEFT), lineIn)]).A?.lineMissed.n).toBe(1);
  });

  it("[D2, D10] key balls feed them: a touch is a groundstroke kept, and so it is at every ball", () => {
    const touch: Shot = { striker: "A", from: kept.from };
    const levels = [key("A", touch, touch, lineIn), every("A", returned, touch, touch, lineIn)];
    for (const charted of levels) {
      expect(figures([charted]).A).toMatchObject({ lineMissed: { x: 0, n: 1 }, lineShare: { x: 1, n: 3 } });
    }
  });

  it("[D10] at key balls only those of the player charted then count", () => {
    const both = openedWith({
      players: {
        A: { playerId: "noor", hand: "right", own: true },
        B: { playerId: "kaito", hand: "right", own: true },
      },
      subjects: ["A", "B"],
    });
    const his = stroke("B", DEUCE, { x: 2.8, y: 13.2 }, { result: "missed", miss: "long" });
    const f = figures(
      [
        { kind: "SubjectsChanged", subjects: ["A"] },
        key("A", lineIn, his),
        { kind: "SubjectsChanged", subjects: ["B"] },
        key("A", his),
      ],
      both,
    );
    expect([f.A?.lineMissed.n, f.B?.lineMissed.n]).toEqual([1, 0]);
    const alone = figures([{ kind: "SubjectsChanged", subjects: ["A"] }, key("A", lineIn, his)], both);
    expect([alone.A?.lineMissed.n, alone.B]).toEqual([1, undefined]);
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
