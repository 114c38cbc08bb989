import { describe, expect, it } from "vitest";
import { format, games, level, next, play, point, points, refusal, STANDARD } from "../test-support/play.ts";
import type { ScoreEvent, TimePolicy } from "./score-event.ts";

const bell = (policy: TimePolicy): ScoreEvent => ({ type: "timeUp", policy });
const TIMED = format({ sets: 1, gamesPerSet: 99, tiebreakAt: null });

describe("early ends", () => {
  it.each([
    [{ type: "retire", side: "A" }, "retired", "B"],
    [{ type: "default", side: "A" }, "defaulted", "B"],
    [{ type: "unplayed" }, "unplayed", null],
  ] as const)("[SC27] [SC28] keeps the score as it stood after %j", (event, status, winner) => {
    const before = play(STANDARD, games("AAAAAAB"), points("AB"));
    expect(next(before, event).state).toEqual({
      ...before.state,
      status,
      winner,
      over: true,
      call: "match",
      server: null,
      side: null,
      endsDue: false,
      pause: "over",
    });
  });

  it("[SC29] has a walkover only before the first point", () => {
    const walkover: ScoreEvent = { type: "walkover", absent: "A" };
    expect(play(STANDARD, walkover).state).toMatchObject({
      winner: "B",
      status: "walkover",
      sets: [],
      games: [0, 0],
    });
    expect(refusal(play(STANDARD, points("A")), walkover)).toEqual({ code: "already_begun" });
    const taken = play(STANDARD, points("A"), { type: "undo", n: 1 });
    expect(next(taken, walkover).state.status).toBe("walkover");
  });

  it.each([
    point("A"),
    { type: "pointPenalty", against: "A" },
    { type: "setScore", points: [0, 0] },
    { type: "setServer", to: "A" },
    { type: "retire", side: "A" },
    { type: "unplayed" },
    bell({ unfinishedGame: "ignored" }),
  ] as const)("[SC27] takes nothing but an undo after the end: %j", (event) => {
    const over = play(STANDARD, { type: "retire", side: "B" });
    expect(refusal(over, event)).toEqual({ code: "match_over", status: "retired" });
    expect(next(over, { type: "undo", n: 1 }).state.over).toBe(false);
  });
});

describe("time is up", () => {
  it.each([
    ["ignored", "AA", [1, 1], null],
    ["leaderGetsIt", "A", [2, 1], "A"],
    ["leaderGetsIt", "AB", [1, 1], null],
    ["needsLeadOfTwo", "A", [1, 1], null],
    ["needsLeadOfTwo", "BB", [1, 2], "B"],
    ["decidingPoint", "B", [1, 2], "B"],
  ] as const)(
    "[SC30] an unfinished game that is %s at %s makes %j",
    (unfinishedGame, letters, inSet, winner) => {
      const { state } = play(TIMED, games("AB"), points(letters), bell({ unfinishedGame }));
      expect(state).toMatchObject({ games: inSet, points: [0, 0], winner, over: true, status: "timeUp" });
    },
  );

  it("[SC30] plays one deciding point when the unfinished game is level", () => {
    const waiting = play(TIMED, games("AB"), points("AB"), bell({ unfinishedGame: "decidingPoint" }));
    expect(waiting.state).toMatchObject({
      over: false,
      call: "deciding",
      side: "receiver-chooses",
      points: [1, 1],
    });
    expect(next(waiting, point("B")).state).toMatchObject({ games: [1, 2], winner: "B", status: "timeUp" });
  });

  it("[SC31] compares sets first, then games of the unfinished set or of the whole match, then points", () => {
    const ahead = games("AAAAAA");
    expect(play(STANDARD, ahead, games("BBB"), bell({ unfinishedGame: "ignored" })).state.winner).toBe("A");
    const oneAll = [...ahead, ...games("AABBBBBB"), ...games("B")];
    const policy: TimePolicy = { unfinishedGame: "ignored" };
    expect(play(STANDARD, oneAll, bell(policy)).state).toMatchObject({
      setsWon: [1, 1],
      games: [0, 1],
      winner: "B",
    });
    expect(play(STANDARD, oneAll, bell({ ...policy, gamesCounted: "match" })).state.winner).toBe("A");
    const byPoints: TimePolicy = { unfinishedGame: "needsLeadOfTwo", pointsDecide: true };
    expect(play(TIMED, games("AB"), points("B"), bell(byPoints)).state.winner).toBe("B");
  });

  it("[SC32] is a draw, or goes on for one point where no draw is allowed", () => {
    const drawn = play(TIMED, games("AB"), bell({ unfinishedGame: "ignored" }));
    expect(drawn.state).toMatchObject({ winner: null, over: true });
    const waiting = play(TIMED, games("AB"), bell({ unfinishedGame: "ignored", drawAllowed: false }));
    expect(waiting.state).toMatchObject({ over: false, call: "deciding", status: "playing" });
    expect(next(waiting, point("A")).state).toMatchObject({
      winner: "A",
      over: true,
      status: "timeUp",
      games: [1, 1],
      points: [1, 0],
    });
    expect(next(waiting, { type: "gamePenalty", against: "A" }).state.winner).toBe("B");
  });

  it("[SC33] brings no change of ends, and may finish a set or the match", () => {
    const policy: TimePolicy = { unfinishedGame: "leaderGetsIt" };
    const before = play(STANDARD, games("AAAAA"), points("AAA"));
    const { state } = next(before, bell(policy));
    expect(state).toMatchObject({
      sets: [[6, 0]],
      setsWon: [1, 0],
      winner: "A",
      status: "timeUp",
      endsDue: false,
    });
    expect(state.changesOfEnds).toBe(before.state.changesOfEnds);
    const tiebreak = play(format({ sets: 1 }), level(6), points("AAB"), bell(policy));
    expect(tiebreak.state).toMatchObject({ sets: [[7, 6, 1]], winner: "A", status: "timeUp" });
  });
});
