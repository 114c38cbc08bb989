import type { HistoryFilter } from "@courtloom/api";
import { describe, expect, it } from "vitest";
import { readFilter, writeFilter } from "./history-place.ts";
import { filterWords, leftOutWords } from "./history-words.ts";
import { daysBefore } from "./period.ts";

const FULL: HistoryFilter = {
  from: "2026-03-01",
  to: "2026-11-25",
  opponent: "stronger",
  surface: "artificialGrass",
  format: "2 sets & a match tie-break",
  level: "every",
  chartist: "Ioan P.",
};

describe("filters in an address", () => {
  it("[PF6] come back as they went, and none is none", () => {
    expect(readFilter(new URLSearchParams(writeFilter(FULL).toString()))).toEqual(FULL);
    expect(readFilter(new URLSearchParams("surface=notKnown"))).toEqual({ surface: "notKnown" });
    expect(writeFilter({}).toString()).toBe("");
  });

  it("[PF6] what an address cannot mean is left out", () => {
    const odd = `from=yesterday&to=2026-1-1&opponent=best&surface=ice&level=2&chartist=${"x".repeat(201)}&format=`;
    expect(readFilter(new URLSearchParams(odd))).toEqual({});
  });

  it("[PF6] are said in words", () => {
    expect(filterWords({})).toBe("all matches");
    expect(filterWords({ to: "2026-11-25", opponent: "similar" })).toBe(
      "until Wed, 25 November 2026, opponents: similar level",
    );
    expect(daysBefore("2026-03-01", 30)).toBe("2026-01-30");
  });

  it("[PF9] what is left out is said with its reason and its count of points", () => {
    expect(leftOutWords({ why: "level", points: 120 })).toBe(
      "120 points charted in less detail than it needs",
    );
    expect(leftOutWords({ why: "netCord", points: 1 })).toBe("1 point decided by the net cord");
  });
});
