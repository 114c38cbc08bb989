import { describe, expect, it } from "vitest";
import { eventErrorText, parseScoreEvent } from "./parse-score-event.ts";

describe("[SC40] events from outside", () => {
  it.each([
    { type: "point", winner: "A" },
    { type: "pointPenalty", against: "B" },
    { type: "gamePenalty", against: "B" },
    {
      type: "setScore",
      sets: [
        [6, 4],
        [7, 6, 5],
        [10, 8, "MTB"],
      ],
      games: [0, 0],
      points: [1, 2],
      server: "A",
    },
    { type: "setScore" },
    { type: "setServer", to: "A" },
    { type: "setOrder", order: ["A1", "B1", "A2", "B2"] },
    { type: "undo", n: 3 },
    { type: "retire", side: "A" },
    { type: "default", side: "A" },
    { type: "walkover", absent: "B" },
    { type: "unplayed" },
    { type: "timeUp", policy: { unfinishedGame: "ignored", drawAllowed: false, gamesCounted: "match" } },
  ])("accepts %j", (event) => expect(parseScoreEvent(event)).toEqual({ ok: true, value: event }));

  it.each([
    [null, "event must be an object with a type"],
    [{ type: "ace" }, "type must be one of point,"],
    [{ type: "point" }, 'winner must be "A" or "B"'],
    [{ type: "point", winner: "a" }, 'winner must be "A" or "B"'],
    [{ type: "point", winner: "A", by: "ace" }, "by must be left out"],
    [{ type: "undo", n: 0 }, "n must be a whole number from 1"],
    [{ type: "setScore", games: [1] }, "games must be two whole numbers"],
    [{ type: "setScore", sets: [[6, 4, "TB"]] }, "sets must be a list of"],
    [{ type: "timeUp" }, "policy must be an object whose unfinishedGame"],
    [
      { type: "timeUp", policy: { unfinishedGame: "ignored", drawAllowed: 1 } },
      "policy.drawAllowed must be true",
    ],
  ])("refuses %j", (event, text) => {
    const parsed = parseScoreEvent(event);
    expect(parsed.ok ? "accepted" : eventErrorText(parsed.error)).toContain(text);
  });
});
