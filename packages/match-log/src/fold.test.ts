import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { EntryBody, LoggedEntry } from "./entry.ts";
import { applyEntry, foldLog, startView } from "./fold.ts";
import { idAt, makeLog, openedWith, pointsOf, pointTo } from "./testing/make-log.ts";
import type { MatchView } from "./view.ts";

const folded = (log: readonly LoggedEntry[]): MatchView => {
  const view = foldLog(log);
  if (!view.ok) throw new Error(view.error);
  return view.value;
};

const shown = ({ trail, ...view }: MatchView) => view;

const stepped = (log: readonly LoggedEntry[]): MatchView => {
  const [opening, ...rest] = log;
  const start = opening && startView(opening);
  if (!start?.ok) throw new Error("no opening");
  return rest.reduce(applyEntry, start.value);
};

describe("the fold of a match log", () => {
  it("[L2] needs its opening first", () => {
    expect(foldLog([])).toEqual({ ok: false, error: "empty_log" });
    expect(foldLog(makeLog(pointsOf("A")).slice(1))).toEqual({ ok: false, error: "no_opening" });
    const broken = openedWith({ format: { ...openedWith().format, sets: 0 } });
    expect(foldLog(makeLog([], broken))).toEqual({ ok: false, error: "bad_format" });
  });

  it("[L3] counts points with the score before and after each", () => {
    const view = folded(makeLog(pointsOf("AAB")));
    expect(view.score).toMatchObject({ points: [2, 1], call: "30-15", server: "A" });
    expect(view.points.map((p) => [p.before.call, p.after.call])).toEqual([
      ["0-0", "15-0"],
      ["15-0", "30-0"],
      ["30-0", "30-15"],
    ]);
  });

  it("[L4] takes a voided entry out as if it had never been, and puts it back", () => {
    const taken = folded(makeLog([...pointsOf("AAB"), { kind: "EntryVoided", target: idAt(3) }]));
    expect(taken.score).toMatchObject({ points: [1, 1] });
    const back = folded(
      makeLog([
        ...pointsOf("AAB"),
        { kind: "EntryVoided", target: idAt(3) },
        { kind: "EntryRestored", target: idAt(3) },
      ]),
    );
    expect(back.score).toEqual(folded(makeLog(pointsOf("AAB"))).score);
  });

  it("[L4] the last amendment holds", () => {
    const amend = (body: EntryBody): EntryBody => {
      if (body.kind !== "PointCharted") throw new Error("a point");
      return { kind: "EntryAmended", target: idAt(2), to: body };
    };
    const view = folded(
      makeLog([...pointsOf("AAA"), amend(pointTo("B")), amend(pointTo("A")), amend(pointTo("B"))]),
    );
    expect(view.score).toMatchObject({ points: [2, 1] });
    expect(view.points[0]?.point.winner).toBe("B");
  });

  it("[L7] sets aside what the score cannot take, and goes on", () => {
    const won = "A".repeat(48);
    const view = folded(makeLog([...pointsOf(`${won}BB`), { kind: "EntryVoided", target: idAt(999) }]));
    expect(view.score).toMatchObject({ over: true, winner: "A" });
    expect(view.setAside.map((s) => s.reason)).toEqual(["matchOver", "matchOver", "unknownTarget"]);
  });

  it("[L7] takes back in what was set aside once a correction makes room for it", () => {
    const won = "A".repeat(48);
    const view = folded(makeLog([...pointsOf(`${won}B`), { kind: "EntryVoided", target: idAt(2) }]));
    expect(view.setAside).toEqual([]);
    expect(view.score).toMatchObject({ over: false, games: [5, 0], points: [3, 1] });
  });

  it("[L8] an entry of an older epoch does not make the score", () => {
    const log = makeLog(pointsOf("AAA"));
    const late = log.map((e, i) => (i === 2 ? { ...e, epoch: 2 } : e));
    const view = folded(late);
    expect(view.score).toMatchObject({ points: [2, 0] });
    expect(view.setAside).toEqual([{ pos: 4, id: idAt(4), reason: "notLead" }]);
  });

  it("[L8] from a take-over on the old lead's entries stand beside the score, before the new lead has charted anything", () => {
    const [opening, first, late, fresh] = makeLog(pointsOf("AAB")) as [
      LoggedEntry,
      LoggedEntry,
      LoggedEntry,
      LoggedEntry,
    ];
    const taken: EntryBody = { kind: "LeadTaken", laneId: "lane-2", epoch: 2 };
    const log = [
      opening,
      first,
      { ...late, laneId: "desk", epoch: 0, entry: { ...late.entry, id: idAt(90), body: taken } },
      { ...late, pos: 4 },
      { ...fresh, pos: 5, laneId: "lane-2", epoch: 2 },
    ];
    const view = folded(log);
    expect(view.score).toMatchObject({ points: [1, 1] });
    expect(view.setAside).toEqual([{ pos: 4, id: idAt(3), reason: "notLead" }]);
    expect(shown(stepped(log))).toEqual(shown(view));
  });

  it("[L8] after sealing only the desk writes", () => {
    const log = makeLog([...pointsOf("A"), { kind: "MatchSealed" }, ...pointsOf("A")]);
    expect(folded(log)).toMatchObject({ sealed: true, setAside: [{ pos: 4, reason: "sealed" }] });
    const desk = log.map((e, i) => (i === 3 ? { ...e, epoch: 0 } : e));
    expect(folded(desk).score).toMatchObject({ points: [2, 0] });
  });

  it("[L9] ends that were wrong since a point are turned from there, but not what was amended after", () => {
    const log = makeLog([
      ...pointsOf("ABAB"),
      { kind: "EndsStated", endOfA: "far", since: idAt(4) },
      {
        kind: "EntryAmended",
        target: idAt(5),
        to: {
          kind: "PointCharted",
          point: { winner: "B", level: "score", seat: "behind", endOfA: "far", shots: [] },
        },
      },
    ]);
    const view = folded(log);
    expect(view.points.map((p) => p.point.endOfA)).toEqual(["near", "near", "far", "far"]);
    expect(view.endOfA).toBe("far");
  });

  it("[L9] side A is at the other end after a change", () => {
    expect(folded(makeLog(pointsOf("AAA"))).endOfA).toBe("near");
    expect(folded(makeLog(pointsOf("AAAA"))).endOfA).toBe("far");
  });

  it("[L6] a warning changes nothing, a penalty is no charted point, an ending ends", () => {
    const view = folded(
      makeLog([
        { kind: "PenaltyGiven", penalty: "warning", against: "A" },
        { kind: "PenaltyGiven", penalty: "point", against: "A" },
        { kind: "MatchEnded", how: { type: "retired", side: "B" } },
      ]),
    );
    expect(view.score).toMatchObject({ points: [0, 1], over: true, winner: "A", status: "retired" });
    expect(view.points).toEqual([]);
  });

  it("[L6] suspension is shown until play goes on", () => {
    const rain: EntryBody = { kind: "PlaySuspended", reason: "rain" };
    expect(folded(makeLog([rain])).suspended).toBe(true);
    expect(folded(makeLog([rain, { kind: "PlayResumed" }])).suspended).toBe(false);
    expect(folded(makeLog([rain, pointTo("A")])).suspended).toBe(false);
    expect(folded(makeLog([{ kind: "PlayResumed" }])).setAside).toMatchObject([{ reason: "notSuspended" }]);
  });
});

/** Any body a lane may write; targets point anywhere, also at nothing. */
const anyBody = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom<EntryBody>(pointTo("A"), pointTo("B")) },
  {
    weight: 3,
    arbitrary: fc.integer({ min: 1, max: 60 }).chain((pos) =>
      fc.constantFrom<EntryBody>(
        { kind: "EntryVoided", target: idAt(pos) },
        { kind: "EntryRestored", target: idAt(pos) },
        { kind: "EndsStated", endOfA: "far", since: idAt(pos) },
        {
          kind: "EntryAmended",
          target: idAt(pos),
          to: { kind: "PenaltyGiven", penalty: "game", against: "A" },
        },
      ),
    ),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom<EntryBody>(
      { kind: "PenaltyGiven", penalty: "point", against: "B" },
      { kind: "ServerStated", to: "B", slip: "players" },
      { kind: "ScoreStated", score: { games: [5, 5] }, missed: true },
      { kind: "ScoreStated", score: { games: [99, 0] }, missed: false },
      { kind: "PlaySuspended", reason: "light" },
      { kind: "PlayResumed" },
      { kind: "LevelChanged", level: "every" },
      { kind: "SubjectsChanged", subjects: ["B"] },
      { kind: "MatchEnded", how: { type: "retired", side: "A" } },
    ),
  },
);

describe("any log", () => {
  it("[L5] step by step equals all at once, and replaying twice gives the same bytes", () => {
    fc.assert(
      fc.property(fc.array(anyBody, { maxLength: 60 }), (bodies) => {
        const log = makeLog(bodies);
        const whole = folded(log);
        expect(shown(stepped(log))).toEqual(shown(whole));
        expect(JSON.stringify(shown(folded(log)))).toBe(JSON.stringify(shown(whole)));
        expect(whole.pos).toBe(log.length);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it("[L4] voiding an entry equals a log in which it had no effect", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom("A", "B"), { minLength: 1, maxLength: 70 }),
        fc.nat(),
        (letters, pick) => {
          const at = pick % letters.length;
          const voided = folded(
            makeLog([...pointsOf(letters.join("")), { kind: "EntryVoided", target: idAt(at + 2) }]),
          );
          const without = folded(makeLog(pointsOf(letters.filter((_, i) => i !== at).join(""))));
          expect(voided.score).toEqual(without.score);
          expect(voided.points.map((p) => p.point.winner)).toEqual(without.points.map((p) => p.point.winner));
        },
      ),
      { seed: 20261126, numRuns: 200 },
    );
  });

  it("[L10] the view given to a step is left as it was", () => {
    const log = makeLog(pointsOf("AB"));
    const before = folded(log);
    const copy = JSON.stringify(shown(before));
    applyEntry(before, {
      ...(log[2] as LoggedEntry),
      pos: 4,
      entry: { ...(log[2] as LoggedEntry).entry, id: idAt(4) },
    });
    expect(JSON.stringify(shown(before))).toBe(copy);
  });
});
