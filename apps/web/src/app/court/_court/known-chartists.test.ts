import { describe, expect, it } from "vitest";
import { courtTrial } from "./court-trial.ts";
import { knownChartists, leadLaneOf, unknownLaneOf } from "./known-chartists.ts";

describe("chartists of a log", () => {
  const { entries } = courtTrial();
  const takenOver = entries.map((entry) =>
    entry.pos > 10 ? { ...entry, laneId: "lane-2", epoch: 2 } : entry,
  );

  it("[BD13] names the leading lane's chartist as the board does", () => {
    expect(leadLaneOf(entries)).toBe("lane-1");
    expect(leadLaneOf(takenOver)).toBe("lane-2");
    expect(knownChartists({}, takenOver, "Dana H.")).toEqual({ "lane-2": "Dana H." });
  });

  it("[BD13] knows a lane from the moment it takes over, before it has charted", () => {
    const [opening] = entries;
    const body = { kind: "LeadTaken", laneId: "lane-2", epoch: 2 } as const;
    const taken = entries.map((entry, i) =>
      i === entries.length - 1 && opening ? { ...opening, entry: { ...opening.entry, body } } : entry,
    );
    expect(leadLaneOf(taken)).toBe("lane-2");
    expect(unknownLaneOf({ "lane-1": "Ioan P." }, taken)).toBe("lane-2");
    expect(unknownLaneOf({ "lane-1": "Ioan P.", "lane-2": "Rosa T." }, taken)).toBeUndefined();
    expect(unknownLaneOf({}, entries.slice(0, 1))).toBeUndefined();
  });

  it("[BD13] never takes a second lane for the one that leads, and still asks for its name", () => {
    const second = entries.map((entry) =>
      entry.pos > 3 ? { ...entry, laneId: "lane-9", epoch: -1 } : entry,
    );
    expect(leadLaneOf(second)).toBe("lane-1");
    expect(unknownLaneOf({ "lane-1": "Ioan P." }, second)).toBe("lane-9");
    const alone = second.filter(({ laneId }) => laneId !== "lane-1");
    expect(knownChartists({}, alone, "Dana H.")).toEqual({});
  });

  it("[BD13] names nobody that it does not know", () => {
    expect(leadLaneOf(entries.slice(0, 1))).toBeUndefined();
    expect(knownChartists({}, entries, null)).toEqual({});
    expect(knownChartists({ "lane-1": "Ioan P." }, entries, "Dana H.")).toEqual({ "lane-1": "Ioan P." });
  });
});
