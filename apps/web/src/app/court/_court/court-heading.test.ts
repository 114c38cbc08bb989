import type { DeskDay, DeskMatch } from "@courtloom/api";
import { describe, expect, it } from "vitest";
import { courtHeading } from "./court-heading.ts";

const match: DeskMatch = {
  matchId: "match-1",
  dayId: "day-1",
  courtId: "court-b",
  orderNo: 1,
  title: "Round 2",
  playedOn: "2026-06-20",
  names: { A: "Noor V.", B: "Elsbeth K." },
  own: { A: true, B: false },
  bothOwn: false,
  doubles: false,
  format: "Best of 3",
  coachingMode: "notKnown",
  subjects: ["A"],
  firstServer: null,
  stage: "open",
};
const day: DeskDay = {
  day: { dayId: "day-1", name: "Saturday match play", date: "2026-06-20" },
  academyName: "Curlew Reach",
  timeZone: "Europe/London",
  courts: [
    { courtId: "court-a", no: 1, name: "Court 1", matches: [] },
    { courtId: "court-b", no: 2, name: "Court 2", matches: [match] },
  ],
  unplaced: [],
};

const lanes = [
  { laneId: "lane-1", chartist: "Ioan P." },
  { laneId: "lane-2", chartist: "Rosa T." },
];

describe("heading of a court's page", () => {
  it("[BD13] takes names from the match and place and zone from its day", () => {
    expect(courtHeading(match, day, lanes)).toMatchObject({
      dayName: "Saturday match play",
      courtNo: 2,
      names: { A: "Noor V.", B: "Elsbeth K." },
      timeZone: "Europe/London",
      coaching: { coachingMode: "notKnown", bothOwn: false },
      chartists: { "lane-1": "Ioan P.", "lane-2": "Rosa T." },
    });
  });

  it("[BD13] does without a day and without a court", () => {
    expect(courtHeading(match, undefined, [])).toMatchObject({ dayId: null, courtNo: null, timeZone: "UTC" });
    expect(courtHeading({ ...match, courtId: null }, day, []).courtNo).toBeNull();
  });
});
