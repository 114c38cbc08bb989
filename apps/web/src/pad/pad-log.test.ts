import type { Entry, EntryBody, LoggedEntry, MatchOpened } from "@courtloom/match-log";
import type { LaneRecord } from "@courtloom/sync";
import { describe, expect, it } from "vitest";
import { joinLog } from "./join-log.ts";
import { laneLevel } from "./lane-level.ts";
import { lastUndoable } from "./last-undoable.ts";

const entry = (id: string, n: number, body: EntryBody): Entry => ({ v: 1, id, n, atMs: 0, wallMs: 0, body });
const point = (id: string, n: number): Entry =>
  entry(id, n, {
    kind: "PointCharted",
    point: { winner: "A", level: "score", seat: "behind", endOfA: "near", shots: [] },
  });
const logged = (pos: number, each: Entry, laneId = "other"): LoggedEntry => ({
  pos,
  laneId,
  epoch: 1,
  entry: each,
});
const opening = logged(1, entry("open", 1, { kind: "MatchOpened" } as MatchOpened), "desk");
const record: LaneRecord = {
  laneId: "mine",
  matchId: "m",
  courtName: "Court 1",
  chartist: "Ioan P.",
  names: { A: "Noor V.", B: "Elsbeth K." },
  level: "every",
  opening,
  acked: 0,
  epoch: 2,
  rejected: [],
  startedWallMs: 0,
};
const ids = (log: readonly LoggedEntry[]) => log.map(({ pos, entry: { id } }) => `${pos} ${id}`);

describe("the log as the phone sees it", () => {
  it("[PD11] puts what the server does not have yet after what it has, once", () => {
    const committed = [opening, logged(2, point("theirs", 1)), logged(3, point("a", 1), "mine")];
    expect(ids(joinLog(committed, record, [point("a", 1), point("b", 2)]))).toEqual([
      "1 open",
      "2 theirs",
      "3 a",
      "4 b",
    ]);
  });

  it("[PD11] starts from the opening on a phone without a signal, and from nothing before that is known", () => {
    expect(ids(joinLog([], record, [point("a", 1)]))).toEqual(["1 open", "2 a"]);
    const { opening: _, ...unopened } = record;
    expect(joinLog([], unopened, [point("a", 1)])).toEqual([]);
  });

  it("[PD11] leaves out a lane that the server never opened, so that nothing counts twice", () => {
    expect(ids(joinLog([opening], { ...record, epoch: 0 }, [point("a", 1)]))).toEqual(["1 open"]);
  });

  it("[PD11] leaves out what the server will never take", () => {
    const rejected = { ...record, rejected: [{ n: 1, code: "bad_shape" as const }] };
    expect(ids(joinLog([opening], rejected, [point("a", 1), point("b", 2)]))).toEqual(["1 open", "2 b"]);
  });
});

describe("undo of charted facts", () => {
  const voids = (id: string, n: number, target: string) => entry(id, n, { kind: "EntryVoided", target });
  const none: ReadonlySet<string> = new Set();

  it("[PD8] goes back fact by fact, to any depth, across lanes", () => {
    const log = [opening, logged(2, point("a", 1)), logged(3, point("b", 1), "mine")];
    expect(lastUndoable(log, none)?.done.entry.id).toBe("b");
    const one = [...log, logged(4, voids("v1", 2, "b"), "mine")];
    expect(lastUndoable(one, none)?.done.entry.id).toBe("a");
    const two = [...one, logged(5, voids("v2", 3, "a"), "mine")];
    expect(lastUndoable(two, none)).toBeUndefined();
    const back = [...two, logged(6, entry("r", 4, { kind: "EntryRestored", target: "a" }), "mine")];
    expect(lastUndoable(back, none)?.by).toEqual({ kind: "EntryVoided", target: "a" });
  });

  it("[PD8] passes over what never counted and what is no fact of play", () => {
    const log = [
      opening,
      logged(2, point("a", 1)),
      logged(3, point("late", 2)),
      logged(4, entry("l", 3, { kind: "LevelChanged", level: "score" })),
    ];
    expect(lastUndoable(log, new Set(["late"]))?.done.entry.id).toBe("a");
  });
});

describe("a lane's level", () => {
  it("[PD1] is what it was opened with until it is changed", () => {
    expect(laneLevel("every", [point("a", 1)])).toBe("every");
    const changes = (["score", "every", "score"] as const).map((level, i) =>
      entry(`l${i}`, i + 1, { kind: "LevelChanged", level }),
    );
    expect(laneLevel("every", changes)).toBe("score");
  });
});
