import { SHOT_KINDS } from "@courtloom/match-log";
import type { SeenPoint } from "@courtloom/tennis";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DraftEvent, type DraftState, EMPTY_STATE, reduceDraft } from "./draft-reducer.ts";
import { finishPoint } from "./finish-point.ts";
import { EMPTY_DRAFT, type PointFrame } from "./point-draft.ts";
import { endingOf, winnerOf } from "./read-draft.ts";
import { reopenPoint } from "./reopen-point.ts";

/** Noor (A) is charted and serves from the near end. */
const frame: PointFrame = { server: "A", seat: "behind", endOfA: "near", subject: "A" };
const near: SeenPoint = { right: 300, away: -1_200 };
const deepFar: SeenPoint = { right: 250, away: 1_000 };
const far: SeenPoint = { right: -300, away: 1_200 };
const drew = (from: SeenPoint, to?: SeenPoint): DraftEvent => ({
  type: "drew",
  from,
  ...(to ? { to } : {}),
  frame,
});
const run = (...events: readonly DraftEvent[]): DraftState => events.reduce(reduceDraft, EMPTY_STATE);
const strikers = (state: DraftState) => state.draft.shots.map((shot) => shot.striker);
const firstIn: DraftEvent = { type: "served", outcome: "in" };
const undrawn = (winner: "A" | "B") => ({ type: "undrawn", winner }) as const;
const chose = (ending: Extract<DraftEvent, { type: "endingChosen" }>["ending"]): DraftEvent => ({
  type: "endingChosen",
  ending,
  chosen: undefined,
});

describe("whose ball it is at key balls", () => {
  it("[PD24] is the charted player's, touch after touch, never in turn", () => {
    expect(strikers(run(drew(near), drew(near), drew(near, deepFar)))).toEqual(["A", "A", "A"]);
  });

  it("[PD24] is the opponent's only where it starts beyond the drawing error on that half", () => {
    expect(strikers(run(drew(near), drew(far, near)))).toEqual(["A", "B"]);
    expect(strikers(run(drew({ right: 0, away: 99 }, deepFar)))).toEqual(["A"]);
    expect(strikers(run(drew({ right: 0, away: 100 }, near)))).toEqual(["B"]);
  });
});

describe("how a point ends at key balls", () => {
  it("[PD26] by the opponent's last shot, not drawn: its winner or its miss in one touch", () => {
    const rally = [firstIn, drew(near), drew(near, deepFar)];
    expect(winnerOf(run(...rally).draft, frame)).toBeUndefined();
    expect(finishPoint(run(...rally, chose(undrawn("B"))).draft, frame)).toEqual({
      winner: "B",
      level: "key",
      seat: "behind",
      endOfA: "near",
      serve: { outcome: "firstIn", faults: 0 },
      shots: [
        { striker: "A", from: near },
        { striker: "A", from: near, to: deepFar, result: "in" },
      ],
    });
    expect(finishPoint(run(...rally, chose(undrawn("A"))).draft, frame)?.winner).toBe("A");
  });

  it("[PD26] a serve that nobody returned needs no ball, and a ball charted later forgets it", () => {
    const missed = run(firstIn, chose(undrawn("A")));
    expect(finishPoint(missed.draft, frame)).toMatchObject({ winner: "A", shots: [] });
    expect(endingOf(reduceDraft(missed, drew(near)).draft, frame)).toBeUndefined();
    expect(winnerOf(run(chose(undrawn("A"))).draft, frame)).toBeUndefined();
    const served = run(firstIn, chose(undrawn("A")), { type: "served", outcome: "fault" }, firstIn);
    expect(winnerOf(served.draft, frame)).toBeUndefined();
  });

  it("[PD26] by the last drawing itself where that is certain, with no touch for it", () => {
    const { draft } = run(firstIn, drew(near), drew(near, { right: 250, away: 1_330 }));
    expect(endingOf(draft, frame)).toEqual({ type: "missed", miss: "long" });
    expect(finishPoint(draft, frame)?.winner).toBe("B");
  });

  it("[PD24] leaves the serve unanswered where nobody answered it", () => {
    const point = finishPoint(run(drew(near), chose(undrawn("A"))).draft, frame);
    expect(point).toMatchObject({ winner: "A", level: "key" });
    expect(point?.serve).toBeUndefined();
  });
});

describe("the counter of balls that sat up and were kept", () => {
  const up: DraftEvent = { type: "satUp", by: 1 };
  const down: DraftEvent = { type: "satUp", by: -1 };

  it("[PD25] goes up, down and back, and is unknown when nobody counted", () => {
    const two = run(firstIn, drew(near), up, up);
    expect(two.draft.satUpKept).toBe(2);
    expect(reduceDraft(two, down).draft.satUpKept).toBe(1);
    expect(reduceDraft(two, { type: "tookBack" }).draft.satUpKept).toBe(1);
    expect("satUpKept" in run(up, down).draft).toBe(false);
    expect("satUpKept" in run(down).draft).toBe(false);
    expect(run(...Array.from({ length: 120 }, () => up)).draft.satUpKept).toBe(99);
  });

  it("[PD25] stands in the point, and at every ball nothing of it does", () => {
    const { draft } = run(firstIn, drew(near), up, chose(undrawn("A")));
    expect(finishPoint(draft, frame)?.satUpKept).toBe(1);
    const { subject: _, ...every } = frame;
    expect(finishPoint({ ...draft, said: { type: "winner" } }, every)).not.toHaveProperty("satUpKept");
  });
});

describe("a ball that the figures leave out", () => {
  const calledOut: DraftEvent = { type: "leftOutChosen", reason: "calledOut" };
  const line = [firstIn, drew(near, deepFar)];

  it("[PD29] called out ends the point against its striker, however it was drawn", () => {
    const called = run(...line, chose({ type: "winner" }), calledOut);
    expect(finishPoint(called.draft, frame)).toMatchObject({
      winner: "B",
      shots: [{ striker: "A", result: "missed", leftOut: "calledOut" }],
    });
    expect(finishPoint(called.draft, frame)?.shots[0]).not.toHaveProperty("miss");
    expect(winnerOf(reduceDraft(called, calledOut).draft, frame)).toBeUndefined();
  });

  it("[PD29] told otherwise afterwards it was not called out", () => {
    const won = run(...line, calledOut, chose({ type: "winner" })).draft;
    expect(won.shots[0]).not.toHaveProperty("leftOut");
    expect(winnerOf(won, frame)).toBe("A");
  });

  it("[PD29] decided by the net cord it keeps its ending, and only a last ball has either", () => {
    const cord: DraftEvent = { type: "leftOutChosen", reason: "netCord" };
    const decided = run(...line, chose({ type: "winner" }), cord);
    expect(finishPoint(decided.draft, frame)).toMatchObject({
      winner: "A",
      shots: [{ result: "winner", leftOut: "netCord" }],
    });
    expect(run(...line, cord, drew(near)).draft.shots[0]).not.toHaveProperty("leftOut");
    expect(reduceDraft(EMPTY_STATE, cord)).toBe(EMPTY_STATE);
  });
});

const places = fc.record({
  right: fc.integer({ min: -600, max: 600 }),
  away: fc.integer({ min: -1_500, max: 1_500 }),
});
const steady: readonly DraftEvent[] = [
  firstIn,
  { type: "served", outcome: "fault" },
  { type: "served", outcome: "ace" },
  { type: "serveLet" },
  { type: "opened", what: 0 },
  { type: "opened", what: 1 },
  { type: "closed" },
  { type: "redrawWanted" },
  { type: "removed" },
  { type: "strikerChanged" },
  { type: "satUp", by: 1 },
  { type: "satUp", by: -1 },
  { type: "leftOutChosen", reason: "netCord" },
  { type: "leftOutChosen", reason: "calledOut" },
  { type: "answered", place: 0, answer: { ask: "ballHeight", value: "low" } },
  { type: "answered", place: 1, answer: { ask: "cameIn", value: false } },
  { type: "forcedChosen", forced: true },
  chose({ type: "winner" }),
  chose({ type: "forced" }),
  chose({ type: "missed", miss: "net" }),
  chose(undrawn("A")),
  chose(undrawn("B")),
];
const anyEvent: fc.Arbitrary<DraftEvent> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...steady) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(...SHOT_KINDS).map((kind) => ({ type: "kindChosen", kind }) as const),
  },
  { weight: 2, arbitrary: fc.tuple(places, places).map(([from, to]) => drew(from, to)) },
  { weight: 2, arbitrary: places.map((from) => drew(from)) },
);

describe("taking back at key balls", () => {
  it("[PD30] undoes a half-charted point step by step down to nothing", () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 30 }), (events) => {
        let state = run(...events);
        for (let left = state.past.length; left > 0; left -= 1) {
          const expected = state.past.at(-1);
          state = reduceDraft(state, { type: "tookBack" });
          expect(state.draft).toEqual(expected);
        }
        expect(state.draft).toEqual(EMPTY_DRAFT);
      }),
      { seed: 30, numRuns: 400 },
    );
  });

  it("[PD30] brings a finished point back as it was charted, whoever is charted and serves", () => {
    let finished = 0;
    fc.assert(
      fc.property(
        fc.array(anyEvent, { maxLength: 30 }),
        fc.constantFrom("A" as const, "B" as const),
        fc.constantFrom("A" as const, "B" as const),
        (events, subject, server) => {
          const seen = { ...frame, subject, server };
          const draft = run(...events.map((e) => (e.type === "drew" ? { ...e, frame: seen } : e))).draft;
          const point = finishPoint(draft, seen);
          if (!point) return;
          finished += 1;
          const stored = JSON.parse(JSON.stringify(reopenPoint(point))) as typeof draft;
          expect(finishPoint(stored, seen)).toEqual(point);
        },
      ),
      { seed: 31, numRuns: 600 },
    );
    expect(finished).toBeGreaterThan(150);
  });
});
