import { readFileSync } from "node:fs";
import type { EntryBody, MatchView } from "@courtloom/match-log";
import { foldLog } from "@courtloom/match-log";
import { idAt, makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FigureAttempt } from "../figures/attempts-of.ts";
import { watchWith } from "../testing/sample-watch.ts";
import { watchCourse } from "./watch-course.ts";

interface StateCase {
  readonly id: string;
  readonly input: {
    readonly u: number;
    readonly d: number;
    readonly H: number;
    readonly x: readonly number[];
  };
  readonly expected: {
    readonly events: readonly (readonly ["raise" | "clear", number])[];
    readonly active: boolean;
  };
}

const { cases } = JSON.parse(
  readFileSync(new URL("../../../../shared/vectors/alert-state.json", import.meta.url), "utf8"),
) as { cases: readonly StateCase[] };

/** A match of points that were drawn, won as the letters say. */
const matchOf = (letters: string, bodies: readonly EntryBody[] = []): MatchView => {
  const points = [...letters].map((winner) => pointTo(winner === "A" ? "A" : "B", { level: "every" }));
  const view = foldLog(makeLog([...points, ...bodies], openedWith()));
  if (!view.ok) throw new Error(view.error);
  return view.value;
};

/** One attempt in each of the first points. */
const attempts = (events: string): FigureAttempt[] => [...events].map((c, at) => ({ at, event: c === "x" }));

const idOfPoint = (at: number): string => idAt(at + 2);

/** Points of a match without any change of ends: a first game that is never won. */
const deuces = (n: number): string => `ABABAB${"AB".repeat(n)}`.slice(0, n);

describe("a watch over a match", () => {
  it("has cases to answer", () => expect(cases.length).toBe(11));

  it.each(cases)("[WA4] $id raises and eases where it should", ({ input, expected }) => {
    const view = matchOf(deuces(input.x.length));
    const { u, d, H, x } = input;
    const seen = watchCourse(
      view,
      watchWith({ up: u, down: d, red: { first: H, late: H } }),
      x.map((event, at) => ({ at, event: event === 1 })),
    );
    const raises = expected.events.filter(([kind]) => kind === "raise");
    const clears = expected.events.filter(([kind]) => kind === "clear");
    // Within one game nothing closes, so that a second raise goes on with the same alert.
    expect(seen.episodes.length).toBe(Math.min(1, raises.length));
    expect(seen.episodes[0]?.raisedBy).toBe(raises[0] && idOfPoint(raises[0][1] - 1));
    expect(seen.episodes[0]?.easedBy).toBe(clears.at(-1) && idOfPoint((clears.at(-1)?.[1] ?? 0) - 1));
    const [isOpen, isActive] = [raises.length > 0, expected.active];
    expect(seen.state === "standing").toBe(isOpen && isActive);
    expect(seen.state === "easing").toBe(isOpen && !isActive);
  });

  it("[WA4] is silent when it notices, stands when it raises, and says since when", () => {
    const three = watchCourse(matchOf(deuces(4)), watchWith(), attempts("oxx"));
    expect([three.state, three.episodes]).toEqual(["noticed", []]);
    const raised = watchCourse(matchOf(deuces(6)), watchWith(), attempts("oxxxx"));
    expect(raised).toMatchObject({
      state: "standing",
      match: { x: 4, n: 5, offPlan: 0 },
      since: { x: 4, n: 4, from: { pointId: idOfPoint(1), set: 1, games: [0, 0] } },
      strength: 1,
      episodes: [{ episode: 1, raisedBy: idOfPoint(4) }],
    });
    expect(raised.hits).toEqual([1, 2, 3, 4].map(idOfPoint));
    expect(raised.others).toEqual([idOfPoint(0)]);
  });

  it("[WA5] closes an alert that eased at the change of ends; a raise before that goes on with it", () => {
    const events = "xxxxoooo";
    const before = watchCourse(matchOf(deuces(9)), watchWith(), attempts(events));
    expect(before.state).toBe("easing");
    const again = watchCourse(matchOf(deuces(13)), watchWith(), attempts(`${events}xxxx`));
    expect(again).toMatchObject({ state: "standing", episodes: [{ episode: 1 }] });
    const changed = watchCourse(matchOf(`${deuces(8)}AA`), watchWith(), attempts(events));
    expect(changed).toMatchObject({
      state: "quiet",
      episodes: [{ episode: 1, easedBy: idOfPoint(7), closedBy: idOfPoint(9) }],
    });
    const second = watchCourse(matchOf(`${deuces(8)}AA${"AB".repeat(3)}`), watchWith(), [
      ...attempts(events),
      ...[10, 11, 12, 13].map((at) => ({ at, event: true })),
    ]);
    expect(second.episodes.map(({ episode, raisedBy }) => [episode, raisedBy])).toEqual([
      [1, idOfPoint(3)],
      [2, idOfPoint(12)],
    ]);
  });

  it("[WA3] beyond the horizon the later thresholds hold and the evidence is carried over", () => {
    const late = watchWith({ horizon: 3, red: { first: 200, late: 300 }, amber: { first: 120, late: 250 } });
    expect(watchCourse(matchOf(deuces(6)), late, attempts("xxxx")).state).toBe("quiet");
    expect(watchCourse(matchOf(deuces(6)), late, attempts("xxxxx")).state).toBe("standing");
  });

  it("[WA6] says nothing of a match of which more than a tenth was not charted, until it is less", () => {
    const mixed = (unseen: number, seen: number): MatchView => {
      const letters = deuces(unseen + seen);
      const bodies = [...letters].map((winner, i) =>
        pointTo(winner === "A" ? "A" : "B", { level: i < unseen ? "score" : "every" }),
      );
      const view = foldLog(makeLog(bodies, openedWith()));
      if (!view.ok) throw new Error(view.error);
      return view.value;
    };
    const from = (first: number, events: string): FigureAttempt[] =>
      [...events].map((c, i) => ({ at: first + i, event: c === "x" }));
    expect(watchCourse(mixed(2, 10), watchWith(), from(2, "xxxx"))).toMatchObject({
      state: "noticed",
      isDoubtful: true,
      episodes: [],
    });
    expect(watchCourse(mixed(2, 18), watchWith(), from(2, "xxxxxxxxxxxxxxxxxx"))).toMatchObject({
      state: "standing",
      isDoubtful: false,
      episodes: [{ raisedBy: idOfPoint(19) }],
    });
  });

  it("[WA6] says nothing while an entry that the score could not take is open", () => {
    const stuck: EntryBody = { kind: "ScoreStated", score: { games: [-1, 0] }, missed: false };
    const points = [...deuces(6)].map((w) => pointTo(w === "A" ? "A" : "B", { level: "every" }));
    const view = foldLog(makeLog([...points.slice(0, 1), stuck, ...points.slice(1)], openedWith()));
    if (!view.ok) throw new Error(view.error);
    expect(watchCourse(view.value, watchWith(), attempts("xxxxx"))).toMatchObject({
      isDoubtful: true,
      episodes: [],
    });
  });

  it("[WA7] counts what was off plan among the events and has nothing to say without attempts", () => {
    const some: FigureAttempt[] = [
      { at: 0, event: true, offPlan: true },
      { at: 1, event: true },
      { at: 2, event: false, offPlan: true },
    ];
    expect(watchCourse(matchOf(deuces(4)), watchWith(), some).match).toEqual({ x: 2, n: 3, offPlan: 1 });
    expect(watchCourse(matchOf(""), watchWith(), [])).toMatchObject({
      state: "quiet",
      match: { x: 0, n: 0, offPlan: 0 },
      strength: 0,
      episodes: [],
    });
  });

  it("[WA4] is the same whether it is asked after each point or once at the end", () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 40 }), (events) => {
        const all = events.map((event, at): FigureAttempt => ({ at, event }));
        const whole = watchCourse(matchOf(deuces(events.length)), watchWith(), all);
        const early = events.map((_, n) =>
          watchCourse(matchOf(deuces(n + 1)), watchWith(), all.slice(0, n + 1)),
        );
        // What was raised once is raised in every later look.
        for (const { episodes } of early)
          expect(whole.episodes.map(({ raisedBy }) => raisedBy)).toEqual(
            expect.arrayContaining(episodes.map(({ raisedBy }) => raisedBy)),
          );
        expect(early.at(-1) ?? whole).toEqual(whole);
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });
});
