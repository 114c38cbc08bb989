import { applyEntry, type EntryBody, foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import { idAt, makeLog, pointsOf, pointTo } from "@courtloom/match-log/testing";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lastUndoable } from "../last-undoable.ts";

const SEED = 20261127;

const viewOf = (log: readonly LoggedEntry[]): MatchView => {
  const folded = foldLog(log);
  if (!folded.ok) throw new Error(folded.error);
  return folded.value;
};

const undoableIn = (log: readonly LoggedEntry[]) =>
  lastUndoable(log, new Set(viewOf(log).trail.refused.map(({ id }) => id)));

const appended = (log: readonly LoggedEntry[], body: EntryBody): LoggedEntry[] => {
  const pos = log.length + 1;
  const entry = { v: 1, id: idAt(pos), n: pos, atMs: pos, wallMs: pos, body } as const;
  return [...log, { pos, laneId: "lane-1", epoch: 1, entry }];
};

const shown = ({ score, points, suspended, endOfA }: MatchView) => ({ score, points, suspended, endOfA });

/** An action on whatever is there: `pick` chooses the entry that it is about. */
type Action = (log: readonly LoggedEntry[], pick: number) => EntryBody;

const about = (log: readonly LoggedEntry[], pick: number): string => {
  const { facts } = viewOf(log).trail;
  return facts[pick % facts.length]?.id ?? idAt(2);
};

const isOut = (log: readonly LoggedEntry[], id: string): boolean =>
  viewOf(log).trail.facts.find((fact) => fact.id === id)?.voided === true;

const ACTIONS: readonly Action[] = [
  () => pointTo("A"),
  () => pointTo("B"),
  () => ({ kind: "PenaltyGiven", penalty: "game", against: "A" }),
  () => ({ kind: "ServerStated", to: "B", slip: "players" }),
  () => ({ kind: "PlaySuspended", reason: "rain" }),
  () => ({ kind: "ScoreStated", score: { games: [2, 2] }, missed: true }),
  () => ({ kind: "ScoreStated", score: { games: [99, 0] }, missed: false }),
  () => ({ kind: "MatchEnded", how: { type: "retired", side: "B" } }),
  (log, pick) => ({ kind: "EndsStated", endOfA: "far", since: about(log, pick) }),
  (log, pick) => ({ kind: "EntryInserted", before: about(log, pick), fact: pointTo("B") as never }),
  (log, pick) => ({ kind: "EntryAmended", target: about(log, pick), to: pointTo("B") as never }),
  (log, pick) => ({ kind: "EntryAmended", target: about(log, pick), to: { kind: "PointReplayed" } }),
  (log, pick) => {
    const target = about(log, pick);
    return { kind: isOut(log, target) ? "EntryRestored" : "EntryVoided", target };
  },
];

const doAll = (log: readonly LoggedEntry[], steps: readonly (readonly [number, number])[]) => {
  let [now, done] = [log, 0];
  for (const [which, pick] of steps) {
    const body = ACTIONS[which % ACTIONS.length]?.(now, pick);
    // What undo itself would do is an undo, not a further action.
    if (!body || JSON.stringify(body) === JSON.stringify(undoableIn(now)?.by)) continue;
    const next = appended(now, body);
    // What finds nothing to act on is no action.
    if (viewOf(next).trail.refused.some(({ pos }) => pos === next.length)) continue;
    now = next;
    done += 1;
  }
  return { log: now, done };
};

const undone = (log: readonly LoggedEntry[], times: number): readonly LoggedEntry[] => {
  let now = log;
  for (let i = 0; i < times; i += 1) {
    const undoable = undoableIn(now);
    if (!undoable) throw new Error("nothing is left to undo");
    now = appended(now, undoable.by);
  }
  return now;
};

describe("undo of any depth", () => {
  it("[PD86] after n facts and corrections n undos give the first score and points", () => {
    const step = fc.tuple(fc.nat(ACTIONS.length - 1), fc.nat(60));
    fc.assert(
      fc.property(
        fc.constantFrom("", "AB", "AAAABBAB"),
        fc.array(step, { maxLength: 25 }),
        (start, steps) => {
          const first = makeLog(pointsOf(start));
          const acted = doAll(first, steps);
          expect(shown(viewOf(undone(acted.log, acted.done)))).toEqual(shown(viewOf(first)));
        },
      ),
      { seed: SEED, numRuns: 300 },
    );
  });

  const three = makeLog(pointsOf("AAB"));
  const after = (...bodies: readonly EntryBody[]) => bodies.reduce(appended, three as LoggedEntry[]);

  it("[PD86] takes back an insertion, an amendment, a point taken out and one put back", () => {
    const inserted = after({ kind: "EntryInserted", before: idAt(3), fact: pointTo("B") as never });
    expect(undoableIn(inserted)?.by).toEqual({ kind: "EntryVoided", target: idAt(5) });
    const amended = after({ kind: "EntryAmended", target: idAt(2), to: pointTo("B") as never });
    expect(undoableIn(amended)?.by).toEqual({ kind: "EntryVoided", target: idAt(5) });
    expect(viewOf(undone(amended, 1)).score).toEqual(viewOf(three).score);
    const out = after({ kind: "EntryVoided", target: idAt(2) });
    expect(undoableIn(out)?.by).toEqual({ kind: "EntryRestored", target: idAt(2) });
    const again = after({ kind: "EntryVoided", target: idAt(2) }, pointTo("A"), {
      kind: "EntryRestored",
      target: idAt(2),
    });
    expect(undoableIn(again)?.by).toEqual({ kind: "EntryVoided", target: idAt(2) });
  });

  it("[PD86] goes on below an undo, and is not misled by what changes nothing", () => {
    const twice = after(
      { kind: "EntryVoided", target: idAt(4) },
      { kind: "EntryVoided", target: idAt(4) },
      { kind: "EntryVoided", target: idAt(99) },
    );
    expect(undoableIn(twice)?.done.entry.id).toBe(idAt(3));
    const beside = [...three, { ...appended(three, pointTo("A"))[4], epoch: -1 } as LoggedEntry];
    expect(undoableIn(beside)?.done.entry.id).toBe(idAt(4));
    expect(beside.slice(4).reduce(applyEntry, viewOf(three)).score).toEqual(viewOf(three).score);
  });

  it("[PD86] takes back a point that was set aside before what it came after", () => {
    const over = makeLog(pointsOf(`${"A".repeat(48)}B`));
    expect(undoableIn(over)?.done.entry.id).toBe(idAt(50));
    expect(viewOf(undone(over, 2)).score).toEqual(viewOf(makeLog(pointsOf("A".repeat(47)))).score);
  });
});
