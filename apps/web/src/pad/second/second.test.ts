import {
  type EntryBody,
  foldLog,
  type LoggedEntry,
  type MatchView,
  SECOND_EPOCH,
} from "@courtloom/match-log";
import { makeLog, pointsOf, pointTo } from "@courtloom/match-log/testing";
import type { LaneRecord } from "@courtloom/sync";
import { describe, expect, it } from "vitest";
import { joinLog } from "../join-log.ts";
import { lastUndoable } from "../last-undoable.ts";
import { cameBack } from "./came-back.ts";
import { countToTell, lanesToCompare, rowsToJudge } from "./lanes-to-compare.ts";
import { scoreWith } from "./merge-preview.ts";
import { neverUndone } from "./never-undone.ts";
import { countWords, laneWords, placeWords, pointWords, theirWords } from "./row-words.ts";
import { scoreWords } from "./score-words.ts";
import { stateScore } from "./state-score.ts";
import { tellMatch } from "./tell-match.ts";

const NAMES = { A: "Noor", B: "Elsbeth" };
const BLANK: LaneRecord = {
  ...{ laneId: "lane-2", matchId: "match-1", courtName: "Court 1", chartist: "Maren H.", names: NAMES },
  ...{ level: "score", acked: 0, epoch: 0, second: true, rejected: [], startedWallMs: 0 },
};
const viewOf = (log: readonly LoggedEntry[]): MatchView => {
  const folded = foldLog(log);
  if (!folded.ok) throw new Error(folded.error);
  return folded.value;
};

/** A log of the lead's bodies, then the second's. */
const twoLanes = (lead: readonly EntryBody[], second: readonly EntryBody[]): LoggedEntry[] =>
  makeLog([...lead, ...second]).map((logged) =>
    logged.pos > lead.length + 1 ? { ...logged, laneId: "lane-2", epoch: SECOND_EPOCH } : logged,
  );

describe("a phone that charts as second", () => {
  it("[PD101] begins with the lead's score, server and all, and with nothing before the first point", () => {
    const view = viewOf(makeLog(pointsOf("AAAABBA")));
    const stated = stateScore(view);
    expect(stated).toMatchObject({ kind: "ScoreStated", missed: true });
    const log = twoLanes(pointsOf("AAAABBA"), stated ? [stated] : []);
    const told = tellMatch(log, { laneId: "lane-2", second: true });
    expect(told.view?.score).toMatchObject({
      games: view.score.games,
      points: view.score.points,
      server: view.score.server,
    });
    expect(stateScore(viewOf(makeLog([])))).toBeUndefined();
  });

  it("[PD101] never takes back the score with which it began", () => {
    const stated = stateScore(viewOf(makeLog(pointsOf("AB"))));
    const { log } = tellMatch(twoLanes(pointsOf("AB"), stated ? [stated] : []), BLANK);
    const [id = ""] = neverUndone({ record: BLANK, log });
    expect(log.find(({ entry }) => entry.id === id)?.entry.body).toEqual(stated);
    expect(lastUndoable(log, new Set([id]))).toBeUndefined();
    expect(neverUndone({ record: { ...BLANK, laneId: "lane-1" }, log: makeLog(pointsOf("A")) })).toEqual([]);
  });

  it("[PD101] shows its own score while the whole match keeps the lead's, and its unsent points count for itself", () => {
    const log = twoLanes(pointsOf("AB"), pointsOf("AA"));
    const told = tellMatch(log, { laneId: "lane-2", second: true });
    expect([told.view?.score.call, told.whole.view?.score.call]).toEqual(["30-0", "15-15"]);
    const lead = tellMatch(log, { laneId: "lane-1" });
    expect(lead.view).toBe(lead.whole.view);
    const own = makeLog([pointTo("B")])
      .slice(1)
      .map(({ entry }) => ({ ...entry, id: "unsent" }));
    const joined = joinLog(log, BLANK, own);
    expect(joined.at(-1)).toMatchObject({ epoch: SECOND_EPOCH, laneId: "lane-2", pos: 6 });
    expect(tellMatch(joined, BLANK).view?.score.call).toBe("30-15");
  });
});

describe("a phone that comes back", () => {
  it("[PD104] learns at which score the lead was taken, and how many of its points came after", () => {
    const taken: EntryBody = { kind: "LeadTaken", laneId: "lane-2", epoch: 2 };
    const log = makeLog([...pointsOf("AAB"), taken, ...pointsOf("ABBB")]).map((logged) => {
      if (logged.pos === 5) return { ...logged, laneId: "desk", epoch: 0 };
      return logged.pos === 6 ? { ...logged, laneId: "lane-2", epoch: 2 } : logged;
    });
    const back = cameBack(log, viewOf(log), { laneId: "lane-1", epoch: 1 });
    expect(back && [scoreWords(back.takenAt), back.points, back.times]).toEqual(["0–0 30–15", 3, 1]);
    expect(cameBack(log, viewOf(log), { laneId: "lane-2", epoch: 2 })).toBeUndefined();
    const untaken = makeLog(pointsOf("A"));
    expect(cameBack(untaken, viewOf(untaken), { laneId: "lane-1", epoch: 1 })).toBeUndefined();
  });
});

describe("what stands beside the score", () => {
  it("[PD105] is counted without the newest point of a second, which the lead charts a moment later", () => {
    const counts = (lead: string, second: string): readonly number[] =>
      lanesToCompare(
        twoLanes(pointsOf(lead), pointsOf(second)),
        viewOf(twoLanes(pointsOf(lead), pointsOf(second))),
      ).map(countToTell);
    expect(counts("AB", "ABA")).toEqual([0]);
    expect(counts("ABA", "ABB")).toEqual([1]);
    expect(counts("AB", "")).toEqual([]);
  });

  it("[PD106] shows the score that a merge would make before it is confirmed, and changes nothing by asking", () => {
    const log = twoLanes(pointsOf("AAB"), pointsOf("AAA"));
    const view = viewOf(log);
    const [comparison] = lanesToCompare(log, view);
    const [row] = comparison ? rowsToJudge(comparison) : [];
    if (!row?.merge) throw new Error("a row to merge");
    expect(scoreWords(scoreWith(view, row.merge, 1))).toBe("0–0 40–0");
    expect(scoreWords(view.score)).toBe("0–0 30–15");
    expect(placeWords(row)).toBe("At 0–0 30–0");
  });

  it("[PD107] says what both charted, who, and how many are the same", () => {
    const shot = { striker: "B", from: { right: 0, away: 0 }, result: "missed", miss: "long" } as const;
    const point = pointTo("A", { level: "every", serve: { outcome: "secondIn", faults: 1 }, shots: [shot] });
    const log = twoLanes([...pointsOf("A"), point], pointsOf("AA"));
    const view = viewOf(log);
    expect(view.points.map((viewed) => pointWords(NAMES, viewed))).toEqual([
      "Noor",
      "Noor, 2nd in, Elsbeth missed long, 1 ball",
    ]);
    const [comparison] = lanesToCompare(log, view);
    expect(comparison && countWords(comparison)).toBe("2 points: 2 same");
    expect(laneWords({ role: "second" }, "Maren H.")).toBe("Maren H., second");
    expect(laneWords({ role: "late" }, undefined)).toBe("Another phone, after the take-over");
    expect([theirWords("Maren H."), theirWords(undefined)]).toEqual(["Maren’s", "theirs"]);
  });
});
