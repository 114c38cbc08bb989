import { type EntryBody, foldLog, type MatchView, timelineOf } from "@courtloom/match-log";
import { idAt, makeLog, openedWith, pointsOf, pointTo } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { factGroups } from "./fact-groups.ts";
import { factMends } from "./fact-mends.ts";
import type { Mending } from "./mend-context.ts";
import { mendedFrame } from "./mended-frame.ts";
import { previewChange, viewWith } from "./preview-change.ts";
import { suspendedSince } from "./suspended-since.ts";

const names = { A: "Noor", B: "Elsbeth" };

const viewOf = (bodies: readonly EntryBody[], opened = openedWith()): MatchView => {
  const folded = foldLog(makeLog(bodies, opened));
  if (!folded.ok) throw new Error(folded.error);
  return folded.value;
};

const mending = (view: MatchView, changes: Partial<Mending> = {}): Mending => ({
  ...{ view, names, epoch: 1, laneId: "lane-1", endOfA: view.endOfA ?? "near" },
  nameOf: (laneId) => (laneId === "lane-2" ? "Dana H." : undefined),
  chart: () => Promise.resolve(),
  ...changes,
});

/** What a choice of a fact writes. */
const bodiesOf = (view: MatchView, id: string, label: string, changes: Partial<Mending> = {}) => {
  const row = timelineOf(view).find((fact) => fact.id === id);
  const chosen = row && factMends(row, mending(view, changes)).find((each) => each.label === label);
  if (!chosen || typeof chosen.does === "string") throw new Error(`no such choice: ${label}`);
  return chosen.does.bodies;
};

const labelsOf = (view: MatchView, id: string, changes: Partial<Mending> = {}): readonly string[] => {
  const row = timelineOf(view).find((fact) => fact.id === id);
  return row ? factMends(row, mending(view, changes)).map(({ label }) => label) : [];
};

const drawn = pointTo("A", {
  level: "key",
  shots: [
    { striker: "A", from: { right: 300, away: -1300 }, to: { right: 300, away: 1000 }, result: "winner" },
  ],
});

describe("the list of a match's facts", () => {
  it("[PD80] stands newest first under each game, with the points before and after, who won it and how", () => {
    const view = viewOf([
      ...pointsOf("AAA"),
      drawn,
      { kind: "PenaltyGiven", penalty: "point", against: "A" },
    ]);
    expect(factGroups(view, mending(view))).toMatchObject([
      {
        title: "Set 1, Noor 1–0 Elsbeth, Elsbeth serves",
        rows: [{ words: "Point penalty against Noor", before: "0–0", after: "15–0", counts: true }],
      },
      {
        title: "Set 1, Noor 0–0 Elsbeth, Noor serves",
        rows: [
          { words: "Noor, winner, 1 ball", before: "40–0", after: "Game Noor, 1–0" },
          { words: "Noor, not seen", before: "30–0", after: "40–0" },
          { words: "Noor, not seen", before: "15–0" },
          { words: "Noor, not seen", before: "0–0", notes: [] },
        ],
      },
    ]);
  });

  it("[PD80] says what was taken out, mended, set aside and why, and who else charted it", () => {
    const log = makeLog([
      ...pointsOf("AAB"),
      { kind: "EntryVoided", target: idAt(2) },
      { kind: "EntryAmended", target: idAt(3), to: { kind: "PointReplayed" } },
      { kind: "PlayResumed" },
    ]).map((logged) => (logged.pos === 4 ? { ...logged, laneId: "lane-2" } : logged));
    const folded = foldLog(log);
    if (!folded.ok) throw new Error(folded.error);
    const [group] = factGroups(folded.value, mending(folded.value));
    expect(group?.rows.map(({ words, notes, counts }) => [words, notes, counts])).toEqual([
      ["Play went on", ["set aside: play was not suspended"], false],
      ["Elsbeth, not seen", ["by Dana H."], true],
      ["Point replayed, nothing counts", ["mended"], true],
      ["Noor, not seen", ["taken out"], false],
    ]);
  });
});

describe("what can be done about a fact", () => {
  it("[PD87] a winner that was called out goes against its striker", () => {
    const view = viewOf([drawn]);
    const then = viewWith(view, bodiesOf(view, idAt(2), "Called out, I saw it in"), 1);
    expect(then.score.points).toEqual([0, 1]);
    expect(then.points[0]?.point.shots[0]).toMatchObject({ result: "missed", leftOut: "calledOut" });
  });

  it("[PD88] the players' slip since a point, put right now, leaves the server of now", () => {
    const view = viewOf(pointsOf("AAB"));
    const label = "Players’ slip, put right now: Noor serves";
    const then = viewWith(view, bodiesOf(view, idAt(3), label), 1);
    expect(then.points.map(({ server }) => server)).toEqual(["A", "B", "B"]);
    expect(then.score.server).toBe("A");
  });

  it("[PD89] ends can be wrong since a point or in its game, and not where the player is always near", () => {
    const view = viewOf(pointsOf("AAAAB"));
    const then = viewWith(view, bodiesOf(view, idAt(3), "Ends were wrong in this game"), 1);
    expect(then.points.map(({ point }) => point.endOfA)).toEqual(["far", "far", "far", "far", "near"]);
    expect(then.endOfA).toBe(view.endOfA);
    const { endOfA: _, ...alwaysNear } = mending(view);
    const row = timelineOf(view)[1];
    const labels = row ? factMends(row, alwaysNear).map(({ label }) => label) : [];
    expect(labels).not.toContain("Ends were wrong until now");
    expect(labels).toContain("Take it out");
  });

  it("[PD90] nothing once the match is closed, and the preview says who can", () => {
    const view = viewOf([...pointsOf("AB"), { kind: "MatchSealed" }]);
    expect(labelsOf(view, idAt(2))).toEqual([]);
    const change = previewChange(view, [{ kind: "EntryVoided", target: idAt(2) }], { epoch: 1, names });
    expect(change.impossible).toBe("This match is closed. Only a director can put something right now.");
  });

  it("[PD85] a point is mended at its level and of its player; one not seen as the pad charts now", () => {
    const view = viewOf([{ kind: "SubjectsChanged", subjects: ["A"] }, drawn, ...pointsOf("B")]);
    const [own, alone] = view.points;
    if (!own || !alone) throw new Error("two points");
    expect(mendedFrame(own, view, "every")).toEqual({
      level: "key",
      frame: { server: "A", seat: "behind", endOfA: "near", subject: "A" },
    });
    expect(mendedFrame(alone, view, "score")).toMatchObject({ level: "every" });
    expect(mendedFrame(alone, view, "key")).toMatchObject({ level: "key", frame: { subject: "A" } });
    const doubles = { ...view, opened: { ...view.opened, doubles: true } };
    expect(mendedFrame(alone, doubles, "every")).toBeUndefined();
    expect(labelsOf(doubles, idAt(4))).not.toContain("Add details");
  });
});

describe("what a mend would change", () => {
  const change = (view: MatchView, ...bodies: readonly EntryBody[]) =>
    previewChange(view, bodies, { epoch: 1, names });

  it("[PD81] says score, server and side, ends, and points that move to another game", () => {
    const view = viewOf(pointsOf("AAAABB"));
    expect(change(view, { kind: "EntryVoided", target: idAt(2) })).toEqual({
      score: "The score 1–0 0–30 becomes 0–0 40–30.",
      also: [
        "Noor serves next, from the left.",
        "2 points charted later move to another game.",
        "2 points charted later have the other server.",
      ],
    });
    expect(change(view, { kind: "EndsStated", endOfA: "far" }).also).toEqual(["Next point: Noor is far."]);
    const warned = change(view, { kind: "PenaltyGiven", penalty: "warning", against: "A" });
    expect(warned).toEqual({ score: "No change in the score: 1–0 0–30.", also: [] });
  });

  const penalty = { kind: "PenaltyGiven", penalty: "game", against: "B" } as const;

  it("[PD81] says which facts no longer fit, which come back, and whether the match is over", () => {
    const won = viewOf([...pointsOf("A".repeat(48)), ...pointsOf("B")]);
    const { also } = change(won, { kind: "EntryVoided", target: idAt(2) });
    expect(also).toContain("Counts again: Elsbeth, not seen.");
    expect(also).toContain("The match is no longer over.");
    const going = viewOf([...pointsOf("A".repeat(47)), ...pointsOf("BB")]);
    const given: EntryBody = { kind: "EntryInserted", before: idAt(49), fact: penalty };
    expect(change(going, given).also).toEqual([
      "No longer fits, kept and not counted: Elsbeth, not seen; Elsbeth, not seen.",
      "The match is over then.",
    ]);
  });

  it("[PD82] says why a score is impossible and what to do", () => {
    const view = viewOf(pointsOf("AB"));
    const stated = (games: [number, number]): EntryBody => ({
      kind: "ScoreStated",
      score: { games },
      missed: false,
    });
    expect(change(view, stated([6, 4])).impossible).toBe("Games: 6–4 is a finished set: put it in sets.");
    const over = viewOf(pointsOf("A".repeat(48)));
    expect(change(over, pointTo("A")).impossible).toContain("Take out its last point or its end first");
    const walkover: EntryBody = { kind: "MatchEnded", how: { type: "walkover", absent: "B" } };
    expect(change(view, walkover).impossible).toContain("retired or defaulted, not a walkover");
  });
});

describe("a suspended match", () => {
  it("[PD84] says why and since when, with the day where it is another one", () => {
    const view = viewOf([...pointsOf("A"), { kind: "PlaySuspended", reason: "heat" }]);
    const at = view.trail.facts.at(-1)?.wallMs ?? 0;
    expect(suspendedSince(view, at + 60_000)).toMatchObject({ reason: "heat" });
    const sameDay = suspendedSince(view, at + 60_000)?.since ?? "";
    expect(suspendedSince(view, at + 24 * 3_600_000)?.since).toMatch(new RegExp(`^\\w{3} ${sameDay}$`));
    expect(suspendedSince(viewOf(pointsOf("A")), at)).toBeUndefined();
  });
});
