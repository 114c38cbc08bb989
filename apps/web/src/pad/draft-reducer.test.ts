import type { SeenPoint } from "@courtloom/tennis";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DraftEvent, type DraftState, EMPTY_STATE, reduceDraft } from "./draft-reducer.ts";
import { finishPoint } from "./finish-point.ts";
import { EMPTY_DRAFT, type PointFrame } from "./point-draft.ts";
import { endingOf, winnerOf } from "./read-draft.ts";
import { reopenPoint } from "./reopen-point.ts";

/** Noor (A) serves from the near end; the chartist sits behind it. */
const frame: PointFrame = { server: "A", seat: "behind", endOfA: "near" };
const far: SeenPoint = { right: -300, away: 1_200 };
const near: SeenPoint = { right: 300, away: -1_200 };
const deepNear: SeenPoint = { right: 250, away: -1_000 };
const deepFar: SeenPoint = { right: -250, away: 1_000 };
const drew = (from: SeenPoint, to?: SeenPoint): DraftEvent => ({
  type: "drew",
  from,
  ...(to ? { to } : {}),
  frame,
});
const run = (...events: readonly DraftEvent[]): DraftState => events.reduce(reduceDraft, EMPTY_STATE);
const strikers = (state: DraftState) => state.draft.shots.map((shot) => shot.striker);

describe("the serve row", () => {
  it("[PD5] reads second in, ace, double fault after a fault", () => {
    const fault: DraftEvent = { type: "served", outcome: "fault" };
    expect(run({ type: "served", outcome: "in" }).draft).toMatchObject({ serve: "firstIn", faults: 0 });
    expect(run(fault, { type: "served", outcome: "in" }).draft).toMatchObject({
      serve: "secondIn",
      faults: 1,
    });
    const double = run(fault, { type: "served", outcome: "doubleFault" }).draft;
    expect(finishPoint(double, frame)).toMatchObject({
      winner: "B",
      serve: { outcome: "doubleFault", faults: 2 },
      shots: [],
    });
    expect(finishPoint(run(fault, { type: "served", outcome: "ace" }).draft, frame)).toMatchObject({
      winner: "A",
      serve: { outcome: "ace", faults: 1 },
    });
  });

  it("[PD5] counts lets on the serve without touching the score or the faults", () => {
    const { draft } = run({ type: "served", outcome: "fault" }, { type: "serveLet" }, { type: "serveLet" });
    expect(draft).toMatchObject({ faults: 1, lets: 2 });
    expect(winnerOf(draft, frame)).toBeUndefined();
  });

  it("[PD6] assumes nothing about a serve that nobody charted, save the second after a fault", () => {
    expect(run(drew(far, deepNear)).draft.serve).toBeUndefined();
    expect(run({ type: "served", outcome: "fault" }, drew(far, deepNear)).draft.serve).toBe("secondIn");
    expect(run({ type: "served", outcome: "ace" }, drew(far, deepNear)).draft.serve).toBe("firstIn");
  });
});

describe("drawn balls", () => {
  it("[PD3] alternate from the receiver on", () => {
    expect(strikers(run(drew(far, deepNear), drew(near, deepFar), drew(far, deepNear)))).toEqual([
      "B",
      "A",
      "B",
    ]);
  });

  it("[PD3] belong to the other player when they start beyond doubt on that half", () => {
    expect(strikers(run(drew(near, deepFar)))).toEqual(["A"]);
    expect(strikers(run(drew({ right: 0, away: -90 }, deepNear)))).toEqual(["B"]);
  });

  it("[PD4] can be redrawn, given to the other player, named and taken out", () => {
    const two = [drew(far, deepNear), drew(near, deepFar)];
    const open: DraftEvent = { type: "opened", what: 0 };
    const redrawn = run(...two, open, { type: "redrawWanted" }, drew({ right: 10, away: 1_300 }));
    expect(redrawn.draft.shots[0]).toEqual({ striker: "B", from: { right: 10, away: 1_300 } });
    expect(redrawn.draft.shots).toHaveLength(2);
    expect(strikers(run(...two, open, { type: "strikerChanged" }))).toEqual(["A", "A"]);
    expect(run(...two, open, { type: "kindChosen", kind: "lob" }).draft.shots[0]?.kind).toBe("lob");
    expect(strikers(run(...two, open, { type: "removed" }))).toEqual(["A"]);
  });
});

describe("how a point ends", () => {
  it("[PD6] is preselected only where the drawing is certain beyond its error", () => {
    const long = run(drew(far, deepNear), drew(near, { right: -250, away: 1_320 })).draft;
    expect(endingOf(long, frame)).toEqual({ type: "missed", miss: "long" });
    expect(winnerOf(long, frame)).toBe("B");
    const nearLine = run(drew(far, deepNear), drew(near, { right: -250, away: 1_250 })).draft;
    expect(endingOf(nearLine, frame)).toBeUndefined();
  });

  it("[PD6] is forgotten when another ball is drawn, and can be taken back", () => {
    const out = { right: -250, away: 1_320 };
    expect(endingOf(run(drew(near, out), drew(far, deepNear)).draft, frame)).toBeUndefined();
    const missed = { type: "missed", miss: "long" } as const;
    const open = run(drew(near, out), { type: "endingChosen", ending: missed, chosen: missed }).draft;
    expect(endingOf(open, frame)).toBeUndefined();
  });

  it("[PD7] puts result, miss and forced on the last shot alone", () => {
    const missed = { type: "missed", miss: "wide" } as const;
    const { draft } = run(
      { type: "served", outcome: "in" },
      drew(far, deepNear),
      drew(near, deepFar),
      { type: "endingChosen", ending: missed, chosen: undefined },
      { type: "forcedChosen", forced: true },
    );
    expect(finishPoint(draft, frame)).toEqual({
      winner: "B",
      level: "every",
      seat: "behind",
      endOfA: "near",
      serve: { outcome: "firstIn", faults: 0 },
      shots: [
        { striker: "B", from: far, to: deepNear },
        { striker: "A", from: near, to: deepFar, result: "missed", miss: "wide", missForced: true },
      ],
    });
  });
});

const places = fc.record({
  right: fc.integer({ min: -600, max: 600 }),
  away: fc.integer({ min: -1_500, max: 1_500 }),
});
const anyEvent: fc.Arbitrary<DraftEvent> = fc.oneof(
  fc.constantFrom<DraftEvent>(
    { type: "served", outcome: "in" },
    { type: "served", outcome: "fault" },
    { type: "serveLet" },
    { type: "opened", what: 0 },
    { type: "removed" },
    { type: "strikerChanged" },
    { type: "redrawWanted" },
    { type: "endingChosen", ending: { type: "winner" }, chosen: undefined },
    { type: "endingChosen", ending: { type: "missed", miss: "net" }, chosen: undefined },
    { type: "forcedChosen", forced: false },
  ),
  fc.tuple(places, places).map(([from, to]) => drew(from, to)),
  places.map((from) => drew(from)),
);

describe("taking back", () => {
  it("[PD8] undoes a half-charted point step by step down to nothing", () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 25 }), (events) => {
        let state = run(...events);
        for (let left = state.past.length; left > 0; left -= 1) {
          const expected = state.past.at(-1);
          state = reduceDraft(state, { type: "tookBack" });
          expect(state.draft).toEqual(expected);
        }
        expect(state.draft).toEqual(EMPTY_DRAFT);
      }),
      { seed: 21 },
    );
  });

  it("[PD8] brings a finished point back as it was charted", () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 25 }), (events) => {
        const point = finishPoint(run(...events).draft, frame);
        fc.pre(point !== undefined);
        if (point) expect(finishPoint(reopenPoint(point), frame)).toEqual(point);
      }),
      { seed: 22 },
    );
  });
});
