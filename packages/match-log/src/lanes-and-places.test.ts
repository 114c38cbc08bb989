import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type EntryBody, type LoggedEntry, SECOND_EPOCH } from "./entry.ts";
import { applyEntry, foldLog, startView } from "./fold.ts";
import { logOfLane } from "./log-of-lane.ts";
import { idAt, makeLog, pointsOf, pointTo } from "./testing/make-log.ts";
import { timelineOf } from "./timeline.ts";
import type { MatchView } from "./view.ts";

const folded = (log: readonly LoggedEntry[]): MatchView => {
  const view = foldLog(log);
  if (!view.ok) throw new Error(view.error);
  return view.value;
};

const stepped = (log: readonly LoggedEntry[]): MatchView => {
  const [opening, ...rest] = log;
  const start = opening && startView(opening);
  if (!start?.ok) throw new Error("no opening");
  return rest.reduce(applyEntry, start.value);
};

/** Some entries of a log written by another lane, at another epoch. */
const by = (
  log: readonly LoggedEntry[],
  laneId: string,
  epoch: number,
  positions: readonly number[],
): LoggedEntry[] =>
  log.map((logged) => (positions.includes(logged.pos) ? { ...logged, laneId, epoch } : logged));

const insert = (before: number | undefined, fact: EntryBody, from?: number): EntryBody => {
  if (fact.kind !== "PointCharted") throw new Error("a point");
  return {
    kind: "EntryInserted",
    ...(before === undefined ? {} : { before: idAt(before) }),
    fact,
    ...(from === undefined ? {} : { from: idAt(from) }),
  };
};

const winners = (view: MatchView): string => view.points.map((p) => p.point.winner).join("");

describe("facts put in before others", () => {
  it("[L13] fold as if they had been charted there", () => {
    const right = folded(makeLog(pointsOf("ABBABA")));
    const view = folded(makeLog([...pointsOf("ABABA"), insert(4, pointTo("B"))]));
    expect(winners(view)).toBe("ABBABA");
    expect(view.score).toEqual(right.score);
  });

  it("[L13] can be voided, amended and put before each other", () => {
    const base = [...pointsOf("AA"), insert(3, pointTo("B")), insert(4, pointTo("B"))];
    expect(winners(folded(makeLog(base)))).toBe("ABBA");
    expect(winners(folded(makeLog([...base, { kind: "EntryVoided", target: idAt(4) }])))).toBe("ABA");
    const amended: EntryBody = { kind: "EntryAmended", target: idAt(5), to: { kind: "PointReplayed" } };
    expect(winners(folded(makeLog([...base, amended])))).toBe("ABA");
  });

  it("[L13] whatever is put in where, step by step equals at once and equals the match charted right", () => {
    const play = fc.array(fc.tuple(fc.constantFrom("A" as const, "B" as const), fc.nat()), { maxLength: 40 });
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom("A", "B"), { minLength: 1, maxLength: 40 }),
        play,
        (first, later) => {
          const line = first.map((letter, i) => ({ letter, pos: i + 2 }));
          const bodies = pointsOf(first.join(""));
          for (const [letter, at] of later) {
            const place = at % line.length;
            bodies.push(insert(line[place]?.pos ?? 0, pointTo(letter)));
            line.splice(place, 0, { letter, pos: bodies.length + 1 });
          }
          const log = makeLog(bodies);
          const view = folded(log);
          expect(stepped(log)).toEqual(view);
          const right = folded(makeLog(pointsOf(line.map(({ letter }) => letter).join(""))));
          expect(view.score).toEqual(right.score);
          expect(winners(view)).toBe(winners(right));
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it("[L13] without a place go after everything so far, and what is charted later comes after them", () => {
    const log = makeLog([...pointsOf("AA"), insert(undefined, pointTo("B")), ...pointsOf("A")]);
    const view = folded(log);
    expect(winners(view)).toBe("AABA");
    expect(stepped(log)).toEqual(view);
    expect(winners(folded(makeLog([insert(undefined, pointTo("B"))])))).toBe("B");
  });

  it("[L7] are set aside where what they stand before is not in the log", () => {
    const view = folded(makeLog([...pointsOf("A"), insert(99, pointTo("B"))]));
    expect(view.setAside).toEqual([{ pos: 3, id: idAt(3), reason: "unknownTarget" }]);
  });
});

describe("second lanes", () => {
  it("[L14] never make the score, and stand beside it without being set aside", () => {
    const log = by(makeLog(pointsOf("ABBA")), "lane-2", SECOND_EPOCH, [3, 5]);
    const view = folded(log);
    expect(winners(view)).toBe("AB");
    expect(view.setAside).toEqual([]);
    expect(stepped(log)).toEqual(view);
  });

  it("[L15] give points to the lead, which stay theirs", () => {
    const entered = insert(4, pointTo("B"), 3);
    const amended: EntryBody = {
      kind: "EntryAmended",
      target: idAt(4),
      to: { kind: "PointReplayed" },
      from: idAt(3),
    };
    const log = by(makeLog([...pointsOf("ABA"), entered, amended]), "lane-2", SECOND_EPOCH, [3]);
    const view = folded(log);
    expect(view.points.map(({ laneId, point }) => [laneId, point.winner])).toEqual([
      ["lane-1", "A"],
      ["lane-2", "B"],
    ]);
    expect(view.trail.facts.find(({ id }) => id === idAt(4))?.laneId).toBe("lane-2");
  });
});

describe("what is taken from another lane", () => {
  const from = (before: number | undefined, winner: "A" | "B", source: number) =>
    insert(before, pointTo(winner, { level: "every", endOfA: "right", seat: "side" }), source);

  it("[L21] leaves the lead's level and ends, which were seen from another seat", () => {
    const ends: EntryBody = { kind: "EndsStated", endOfA: "far", since: idAt(2) };
    const merged = folded(
      by(makeLog([...pointsOf("AB"), from(undefined, "B", 3)]), "lane-2", SECOND_EPOCH, [3]),
    );
    expect([merged.level, merged.endOfA]).toEqual(["score", "near"]);
    const turned = folded(
      by(makeLog([...pointsOf("AB"), from(undefined, "B", 3), ends]), "lane-2", SECOND_EPOCH, [3]),
    );
    expect(turned.points.map(({ point }) => point.endOfA)).toEqual(["far", "right"]);
    expect(turned.endOfA).toBe("far");
  });
});

describe("amendments", () => {
  const amend = (target: number, winner: "A" | "B", from?: number): EntryBody => ({
    kind: "EntryAmended",
    target: idAt(target),
    to: pointTo(winner) as Extract<EntryBody, { kind: "PointCharted" }>,
    ...(from === undefined ? {} : { from: idAt(from) }),
  });

  it("[L20] are voided and restored by themselves: the fact says again what it said before", () => {
    const base = [...pointsOf("AA"), amend(2, "B"), amend(2, "A"), amend(3, "B")];
    const after = (...more: EntryBody[]) => winners(folded(makeLog([...base, ...more])));
    const undo = (target: number): EntryBody => ({ kind: "EntryVoided", target: idAt(target) });
    const redo = (target: number): EntryBody => ({ kind: "EntryRestored", target: idAt(target) });
    expect(after()).toBe("AB");
    expect(after(undo(5))).toBe("BB");
    expect(after(undo(4))).toBe("AB");
    expect(after(undo(5), undo(4))).toBe("AB");
    expect(after(undo(6), undo(5), redo(6))).toBe("BB");
    expect(after(undo(2))).toBe("B");
  });

  it("[L20] that took over another lane's saying give the name back with it", () => {
    const undo: EntryBody = { kind: "EntryVoided", target: idAt(4) };
    const log = by(makeLog([...pointsOf("AB"), amend(2, "B", 3), undo]), "lane-2", SECOND_EPOCH, [3]);
    const before = folded(log.slice(0, 4));
    expect(before.points.map(({ laneId, point }) => [laneId, point.winner])).toEqual([["lane-2", "B"]]);
    const view = folded(log);
    expect(view.points.map(({ laneId, point }) => [laneId, point.winner])).toEqual([["lane-1", "A"]]);
    expect(stepped(log)).toEqual(view);
  });

  it("[L20] whatever is amended, voided and restored, step by step equals at once", () => {
    const steps = fc.array(fc.tuple(fc.constantFrom("amend", "void", "restore"), fc.nat(), fc.boolean()), {
      maxLength: 25,
    });
    fc.assert(
      fc.property(steps, (chosen) => {
        const bodies = pointsOf("ABAB");
        for (const [kind, at, toA] of chosen) {
          const target = (at % bodies.length) + 2;
          if (kind === "amend") bodies.push(amend(target, toA ? "A" : "B"));
          else bodies.push({ kind: kind === "void" ? "EntryVoided" : "EntryRestored", target: idAt(target) });
        }
        const log = makeLog(bodies);
        expect(stepped(log)).toEqual(folded(log));
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });
});

describe("the match as one lane tells it", () => {
  const taken: EntryBody = { kind: "LeadTaken", laneId: "lane-2", epoch: 2 };

  it("[L12] goes on after a take-over with what its phone charted meanwhile", () => {
    // lane-1 led AB and charted BB more while away; lane-2 took over and charted A.
    const log = by(makeLog([...pointsOf("AB"), taken, ...pointsOf("ABB")]), "lane-2", 2, [5]).map((logged) =>
      logged.pos === 4 ? { ...logged, laneId: "desk", epoch: 0 } : logged,
    );
    expect(winners(folded(log))).toBe("ABA");
    expect(winners(folded(logOfLane(log, "lane-1")))).toBe("ABBB");
    expect(winners(folded(logOfLane(log, "lane-2")))).toBe("ABA");
  });

  it("[L12] of a second lane is the opening and its own entries, its own corrections with them", () => {
    const bodies: EntryBody[] = [
      ...pointsOf("AAA"),
      { kind: "ScoreStated", score: { points: [2, 0] }, missed: true },
      ...pointsOf("B"),
      { kind: "EntryVoided", target: idAt(6) },
      ...pointsOf("A"),
    ];
    const log = by(makeLog(bodies), "lane-2", SECOND_EPOCH, [5, 6, 7, 8]);
    const own = folded(logOfLane(log, "lane-2"));
    expect([winners(own), own.score.call]).toEqual(["A", "40-0"]);
    expect(logOfLane(log, "lane-3")).toEqual([log[0]]);
  });
});

describe("the timeline", () => {
  it("[L11] shows each fact between its scores, voided and set-aside ones too", () => {
    const bodies: EntryBody[] = [
      ...pointsOf("AA"),
      { kind: "PenaltyGiven", penalty: "point", against: "A" },
      { kind: "PlayResumed" },
      { kind: "EntryVoided", target: idAt(2) },
    ];
    const line = timelineOf(folded(makeLog(bodies)));
    expect(
      line.map(({ fact, voided, before, after, setAside }) => [
        fact.kind,
        voided,
        before.call,
        after.call,
        setAside,
      ]),
    ).toEqual([
      ["PointCharted", true, "0-0", "0-0", undefined],
      ["PointCharted", false, "0-0", "15-0", undefined],
      ["PenaltyGiven", false, "15-0", "15-15", undefined],
      ["PlayResumed", false, "15-15", "15-15", "notSuspended"],
    ]);
  });
});
