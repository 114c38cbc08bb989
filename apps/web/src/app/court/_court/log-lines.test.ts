import { describe, expect, it } from "vitest";
import { courtTrial } from "./court-trial.ts";
import { logLines } from "./log-lines.ts";

const names = { A: "Noor V.", B: "Elsbeth K." };

describe("log of a court", () => {
  const { entries, view } = courtTrial();
  const lines = logLines(entries, view, { names, chartists: { "lane-1": "Ioan P." } });
  const at = (pos: number) => lines.find((line) => line.pos === pos);

  it("[BD13] shows every entry, in order, with who wrote it", () => {
    expect(lines.map((line) => line.pos)).toEqual(entries.map((entry) => entry.pos));
    expect(at(1)).toMatchObject({
      who: "Desk",
      words: "The match was opened, Noor V. to serve",
      score: null,
    });
    expect(at(2)).toMatchObject({
      who: "Ioan P.",
      words: "Elsbeth K. won the point, second serve in, 3 shots charted",
    });
    expect(logLines(entries, view, { names, chartists: {} })[1]?.who).toBe("Another phone");
  });

  it("[BD13] says who took over, and keeps both names", () => {
    const body = { kind: "LeadTaken", laneId: "lane-2", epoch: 2 } as const;
    const taken = entries.map((logged) =>
      logged.pos === 3 ? { ...logged, laneId: "desk", epoch: 0, entry: { ...logged.entry, body } } : logged,
    );
    const read = logLines(taken, view, { names, chartists: { "lane-1": "Ioan P.", "lane-2": "Rosa T." } });
    expect(read.slice(1, 3)).toMatchObject([
      { who: "Ioan P." },
      { who: "Rosa T.", words: "Took over: leads from here" },
    ]);
  });

  it("[BD17] says of a second lane's entry that it is beside the score, and of a merge as whose it was charted", () => {
    const source = entries[3]?.entry.id ?? "";
    const target = entries[1]?.entry.id ?? "";
    const merged = entries.map((logged) => {
      if (logged.pos === 4) return { ...logged, laneId: "lane-2", epoch: -1 };
      const to = { kind: "PointReplayed" } as const;
      const body = { kind: "EntryAmended", target, to, from: source } as const;
      return logged.pos === 6 ? { ...logged, entry: { ...logged.entry, body } } : logged;
    });
    const read = logLines(merged, view, { names, chartists: { "lane-1": "Ioan P.", "lane-2": "Rosa T." } });
    expect([read[3], read[5]].map((line) => [line?.who, line?.note])).toEqual([
      ["Rosa T.", "Second: beside the score."],
      ["Ioan P.", "As Rosa T. charted it."],
    ]);
  });

  it("[BD13] gives a point the score after it", () => {
    expect(at(2)?.score).toBe("0–0 0–15");
    expect(at(20)?.score).toBeNull();
  });

  it("[BD13] says what a correction did, at the correction and at what it corrected", () => {
    expect(at(22)?.words).toBe("Took back entry 5");
    expect(at(5)).toMatchObject({ note: "Taken back by 22", struck: true, score: null });
    expect(at(23)?.words).toMatch(/^Corrected entry 7: Noor V. won the point/);
    expect(at(7)).toMatchObject({ note: "Corrected by 23", struck: false });
  });

  it("[BD13] keeps and explains an entry that the score could not take", () => {
    expect(at(24)).toMatchObject({
      note: "Set aside: play was not suspended. It is kept here.",
      struck: true,
    });
  });
});
