import type { EntryBody } from "@courtloom/match-log";
import { applyEntry, foldLog } from "@courtloom/match-log";
import { idAt, makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { watchWith } from "../testing/sample-watch.ts";
import type { WatchView } from "../watches/alert.ts";
import { watchesOf } from "../watches/watches-of.ts";
import { type KnownAlert, type Reconciled, reconcileAlerts } from "./reconcile-alerts.ts";

const SEED = 20261125;

type Course = Pick<WatchView, "episodes" | "state">;

const courseOf = (closed: number, state: WatchView["state"]): Course => ({
  episodes: Array.from({ length: closed + (state === "quiet" ? 0 : 1) }, (_, i) => ({
    episode: i + 1,
    raisedBy: `point-${i}`,
    ...(i < closed ? { closedBy: `point-${i}-end` } : {}),
  })),
  state,
});

/** The ledger after it has learnt. */
const learn = (known: readonly KnownAlert[], { raised, withdrawn }: Reconciled): readonly KnownAlert[] => [
  ...known.map((alert) => (withdrawn.includes(alert.episode) ? { ...alert, isWithdrawn: true } : alert)),
  ...raised.map((episode) => ({ episode, isWithdrawn: false })),
];

/** Reconciles after each step, now and then twice, and says every transition that was new. */
const transitionsOf = (courses: readonly Course[]) => {
  let known: readonly KnownAlert[] = [];
  const said: string[] = [];
  let last: Reconciled | undefined;
  for (const course of courses) {
    last = reconcileAlerts(course, known);
    said.push(...last.raised.map((n) => `${n} raised`), ...last.withdrawn.map((n) => `${n} withdrawn`));
    known = learn(known, last);
  }
  return { known, said, last };
};

describe("alerts and the fold", () => {
  it("[AL1] raises what the ledger does not have, and nothing when asked again", () => {
    const first = reconcileAlerts(courseOf(1, "standing"), []);
    expect(first).toEqual({
      alerts: [
        { episode: 1, state: "closed", raisedBy: "point-0" },
        { episode: 2, state: "standing", raisedBy: "point-1" },
      ],
      raised: [1, 2],
      withdrawn: [],
    });
    const again = reconcileAlerts(courseOf(1, "easing"), learn([], first));
    expect(again).toMatchObject({ raised: [], withdrawn: [] });
    expect(again.alerts.map(({ state }) => state)).toEqual(["closed", "easing"]);
  });

  it("[AL2] withdraws what the log bears out no more, and never uses its number again", () => {
    const { known, said } = transitionsOf([
      courseOf(0, "standing"),
      courseOf(0, "quiet"),
      courseOf(0, "standing"),
      courseOf(1, "standing"),
      courseOf(0, "standing"),
    ]);
    expect(said).toEqual(["1 raised", "1 withdrawn", "2 raised", "3 raised", "3 withdrawn"]);
    expect(known.map(({ episode, isWithdrawn }) => [episode, isWithdrawn])).toEqual([
      [1, true],
      [2, false],
      [3, true],
    ]);
  });

  it(`[AL2] says no transition of a number twice, in any order of corrections and restarts (seed ${SEED})`, () => {
    const course = fc
      .tuple(fc.nat(3), fc.constantFrom<WatchView["state"]>("quiet", "standing", "easing"))
      .map(([closed, state]) => courseOf(closed, state));
    const steps = fc.array(fc.tuple(course, fc.integer({ min: 1, max: 3 })), { maxLength: 40 });
    fc.assert(
      fc.property(steps, (drawn) => {
        const { known, said, last } = transitionsOf(
          drawn.flatMap(([one, times]) => Array.from({ length: times }, () => one)),
        );
        expect(new Set(said).size).toBe(said.length);
        const open = known.filter(({ isWithdrawn }) => !isWithdrawn).map(({ episode }) => episode);
        expect(last?.alerts.map(({ episode }) => episode) ?? []).toEqual(open);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

/** A point of side A that ends with a line ball: missed, or a winner. */
const drawn = (missed: boolean): Extract<EntryBody, { kind: "PointCharted" }> => {
  const body = pointTo(missed ? "B" : "A", {
    level: "key",
    serve: { outcome: "firstIn", faults: 0 },
    shots: [
      {
        striker: "A",
        from: { right: 300, away: -1200 },
        to: { right: 280, away: missed ? 1330 : 900 },
        result: missed ? "missed" : "winner",
        ...(missed ? { miss: "long" } : {}),
      },
    ],
  });
  if (body.kind !== "PointCharted") throw new Error("a point");
  return body;
};

const watchIn = (bodies: readonly EntryBody[]): WatchView => {
  const view = foldLog(makeLog(bodies, openedWith({ watches: [watchWith()] })));
  const [watch] = view.ok ? watchesOf(view.value) : [];
  if (!watch) throw new Error("a watch");
  return watch;
};

describe("alerts over a log that is corrected", () => {
  const match = fc.record({
    charted: fc.array(fc.boolean(), { minLength: 4, maxLength: 40 }),
    amended: fc.array(fc.tuple(fc.nat(39), fc.boolean()), { maxLength: 20 }),
  });

  it(`[AL2] after every storm of corrections bears out what the log charted right does (seed ${SEED})`, () => {
    fc.assert(
      fc.property(match, ({ charted, amended }) => {
        const right = [...charted];
        let known: readonly KnownAlert[] = [];
        const said: string[] = [];
        const log = makeLog(
          [
            ...charted.map(drawn),
            ...amended.map(
              ([at, missed]): EntryBody => ({
                kind: "EntryAmended",
                target: idAt((at % charted.length) + 2),
                to: drawn(missed),
              }),
            ),
          ],
          openedWith({ watches: [watchWith()] }),
        );
        const opening = foldLog(log.slice(0, 1));
        if (!opening.ok) throw new Error(opening.error);
        let view = opening.value;
        for (const entry of log.slice(1)) {
          view = applyEntry(view, entry);
          const [watch] = watchesOf(view);
          if (!watch) throw new Error("a watch");
          const now = reconcileAlerts(watch, known);
          said.push(...now.raised.map((n) => `${n} raised`), ...now.withdrawn.map((n) => `${n} withdrawn`));
          known = learn(known, now);
        }
        for (const [at, missed] of amended) right[at % charted.length] = missed;
        const due = watchIn(right.map(drawn));
        const last = reconcileAlerts(due, known);
        expect(new Set(said).size).toBe(said.length);
        expect(last).toMatchObject({ raised: [], withdrawn: [] });
        expect(last.alerts.length).toBe(due.episodes.length);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});
