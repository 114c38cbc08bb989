import { describe, expect, it } from "vitest";
import { format, games, level, next, play, point, points, refusal, STANDARD } from "../test-support/play.ts";
import { scoreErrorText } from "./score-error.ts";
import type { ScoreEvent } from "./score-event.ts";

const penalty = (type: "pointPenalty" | "gamePenalty", against: "A" | "B"): ScoreEvent => ({ type, against });

describe("penalties", () => {
  it("[SC18] starts the next game 0-15 or 15-0 at a change of ends, whoever serves", () => {
    expect(play(STANDARD, games("A"), penalty("pointPenalty", "A")).state.call).toBe("15-0");
    expect(play(STANDARD, games("A"), penalty("pointPenalty", "B")).state.call).toBe("0-15");
  });

  it("[SC19] loses a match tie-break, and the match, by a game penalty; the points stay in the record", () => {
    const rules = format({ finalSet: { kind: "matchTiebreak", to: 10 } });
    const lost = play(rules, games("AAAAAABBBBBB"), points("AAAB"), penalty("gamePenalty", "A"));
    expect(lost.state).toMatchObject({
      over: true,
      winner: "B",
      setsWon: [1, 2],
      sets: [
        [6, 0],
        [0, 6],
        [3, 1, "MTB"],
      ],
    });
  });

  it("[SC19] loses the tie-break about to begin by a game penalty at 6-6", () => {
    const lost = play(STANDARD, level(6), penalty("gamePenalty", "B"));
    expect(lost.state).toMatchObject({ sets: [[7, 6, 0]], server: "B", endsDue: true });
  });

  it("[SC20] counts games lost by lateness for order and ends, yet a walkover can still follow", () => {
    const late = play(STANDARD, penalty("gamePenalty", "A"), penalty("gamePenalty", "A"));
    expect(late.state).toMatchObject({ games: [0, 2], server: "A", changesOfEnds: 1, endsDue: false });
    expect(next(late, { type: "walkover", absent: "A" }).state).toMatchObject({
      winner: "B",
      status: "walkover",
    });
  });
});

describe("stated scores", () => {
  it("[SC22] [SC24] [SC25] takes what is stated and works out server, call and changes of ends", () => {
    const board = play(STANDARD, games("A"), points("BB"));
    const stated = next(board, { type: "setScore", games: [3, 1], points: [2, 1] });
    expect(stated.state).toMatchObject({
      games: [3, 1],
      points: [2, 1],
      server: "A",
      call: "30-15",
      side: "ad",
      changesOfEnds: 2,
      endsDue: false,
      pause: "point",
    });
    const told = next(board, { type: "setScore", games: [3, 1], points: [2, 1], server: "B" });
    expect(told.state).toMatchObject({ server: "B", call: "15-30" });
    expect(next(next(told, point("A")), point("A")).state.server).toBe("A");
  });

  it("[SC22] leaves unstated members as they are", () => {
    const board = play(STANDARD, games("AAB"), points("A"));
    expect(next(board, { type: "setScore", points: [3, 3] }).state).toMatchObject({
      games: [2, 1],
      call: "deuce",
    });
    expect(next(board, { type: "setScore", sets: [[6, 2]] }).state).toMatchObject({
      games: [2, 1],
      setsWon: [1, 0],
    });
  });

  it("[SC22] goes on from a stated match tie-break, and ends the match by stated sets", () => {
    const rules = format({ finalSet: { kind: "matchTiebreak", to: 10 } });
    const oneAll: ScoreEvent = {
      type: "setScore",
      sets: [
        [6, 4],
        [3, 6],
      ],
      games: [0, 0],
      points: [8, 9],
    };
    expect(play(rules, oneAll).state).toMatchObject({ matchTieBreak: true, call: "8-9", server: "A" });
    expect(play(rules, oneAll, point("B")).state).toMatchObject({ over: true, winner: "B" });
    const done: ScoreEvent = {
      type: "setScore",
      sets: [
        [6, 4],
        [3, 6],
        [10, 7, "MTB"],
      ],
    };
    expect(play(rules, done).state).toMatchObject({
      over: true,
      winner: "A",
      status: "completed",
      pause: "over",
    });
  });

  it("[SC23] accepts sets that ended by agreement", () => {
    const odd: ScoreEvent = {
      type: "setScore",
      sets: [
        [3, 2, 8],
        [3, 0],
      ],
    };
    expect(play(format({ sets: 5 }), odd).state.setsWon).toEqual([2, 0]);
  });

  it.each([
    [{ sets: [[6, 6]] }, "sets"],
    [
      {
        sets: [
          [6, 4],
          [6, 4],
          [6, 4],
        ],
      },
      "sets",
    ],
    [{ sets: [[6, 3, 5]] }, "sets"],
    [{ games: [6, 4] }, "games"],
    [{ games: [-1, 0] }, "games"],
    [{ games: [1.5, 0] }, "games"],
    [{ points: [4, 0] }, "points"],
    [{ points: [9, 6] }, "points"],
    [{ games: [6, 6], points: [7, 5] }, "points"],
    [
      {
        sets: [
          [6, 4],
          [6, 4],
        ],
        games: [1, 0],
      },
      "games",
    ],
  ] as const)("[SC23] refuses %j and says why", (score, member) => {
    const board = play(STANDARD);
    const error = refusal(board, { type: "setScore", ...score } as ScoreEvent);
    expect(error).toMatchObject({ code: "impossible_score", member });
    expect(scoreErrorText(error).length).toBeGreaterThan(15);
  });

  it("[SC23] refuses games in a set that is a tie-break, and points beyond a deciding point", () => {
    const tiebreaks = play(format({ tieBreakOnly: { to: 10 } }));
    expect(refusal(tiebreaks, { type: "setScore", games: [1, 0] })).toMatchObject({ member: "games" });
    const noAd = play(format({ noAd: true }));
    expect(refusal(noAd, { type: "setScore", points: [4, 3] })).toMatchObject({ member: "points" });
    expect(next(noAd, { type: "setScore", points: [3, 3] }).state.call).toBe("deciding");
  });

  it("[SC25] counts the changes of ends that play would have brought", () => {
    const played = play(STANDARD, level(6), points("AAAAABBBBBAA"), games("BBB"), points("A"));
    const stated = play(STANDARD, { type: "setScore", sets: [[7, 6, 5]], games: [0, 3], points: [1, 0] });
    expect(stated.state.changesOfEnds).toBe(played.state.changesOfEnds);
    expect(stated.state.server).toBe(played.state.server);
  });
});

describe("server corrections", () => {
  it("[SC34] puts the right server on at once within a game and the points stand", () => {
    const board = play(STANDARD, points("AAB"), { type: "setServer", to: "B" });
    expect(board.state).toMatchObject({ server: "B", call: "15-30", points: [2, 1] });
    expect(next(board, { type: "setServer", to: "A" }).state).toMatchObject({ server: "A", call: "30-15" });
  });

  it("[SC34] changes nothing when the stated side serves already", () => {
    expect(play(STANDARD, points("A"), { type: "setServer", to: "A" }).state).toEqual(
      play(STANDARD, points("A")).state,
    );
  });

  it("[SC34] keeps the altered order through the next set", () => {
    const altered = play(STANDARD, { type: "setServer", to: "B" }, games("BBBBBBA"));
    expect(altered.state).toMatchObject({ games: [1, 0], server: "A" });
  });
});

describe("undo", () => {
  it("[SC26] takes back across sets, penalties, corrections and the end of the match", () => {
    const over = play(STANDARD, games("A".repeat(12)));
    expect(over.state.over).toBe(true);
    expect(next(over, { type: "undo", n: 1 }).state).toMatchObject({
      games: [5, 0],
      points: [3, 0],
      over: false,
    });
    expect(next(over, { type: "undo", n: 48 }).state).toEqual(play(STANDARD).state);
    const mixed = play(STANDARD, points("AB"), penalty("gamePenalty", "A"), { type: "setServer", to: "A" });
    expect(next(mixed, { type: "undo", n: 2 }).state).toEqual(play(STANDARD, points("AB")).state);
  });

  it("[SC26] counts events, not earlier undos", () => {
    const board = play(STANDARD, points("AAB"), { type: "undo", n: 1 }, { type: "undo", n: 1 });
    expect(board.state).toEqual(play(STANDARD, points("A")).state);
  });

  it.each([0, -1, 1.5, 4, Number.NaN])("[SC26] refuses to take back %d of three", (n) => {
    const error = refusal(play(STANDARD, points("ABA")), { type: "undo", n });
    expect(error).toEqual({ code: "nothing_to_undo", asked: n, available: 3 });
  });
});
