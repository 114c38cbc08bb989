import { describe, expect, it } from "vitest";
import { format, games, level, play, points, STANDARD } from "../test-support/play.ts";
import { isDecidingPoint, pointSituation } from "./point-situation.ts";
import { scoreLine } from "./score-line.ts";
import { secondsAllowed } from "./seconds-allowed.ts";

const stakes = (...args: Parameters<typeof play>) => pointSituation(play(...args));
const NOTHING = { game: false, break: false, set: false, match: false };

describe("what the next point would win", () => {
  it("[SC38] is nothing at the start and after the end", () => {
    expect(stakes(STANDARD)).toEqual({ A: NOTHING, B: NOTHING });
    expect(stakes(STANDARD, { type: "unplayed" })).toEqual({ A: NOTHING, B: NOTHING });
  });

  it("[SC38] is a game for the server, a break for the receiver, both at a deciding point", () => {
    expect(stakes(STANDARD, points("AAA"))).toEqual({ A: { ...NOTHING, game: true }, B: NOTHING });
    expect(stakes(STANDARD, points("BBB")).B).toEqual({ ...NOTHING, game: true, break: true });
    const decider = play(format({ noAd: true }), points("ABABAB"));
    expect(isDecidingPoint(decider)).toBe(true);
    expect(pointSituation(decider)).toEqual({
      A: { ...NOTHING, game: true },
      B: { ...NOTHING, game: true, break: true },
    });
    expect(isDecidingPoint(play(STANDARD, points("ABABAB")))).toBe(false);
  });

  it("[SC38] is a set or the match, and a tie-break has no break", () => {
    expect(stakes(STANDARD, games("AAAAA"), points("AAA")).A).toEqual({
      game: true,
      break: true,
      set: true,
      match: false,
    });
    const tiebreak = stakes(format({ sets: 1 }), level(6), points("AAAAAA"));
    expect(tiebreak.A).toEqual({ game: true, break: false, set: true, match: true });
    expect(tiebreak.B).toEqual(NOTHING);
  });
});

describe("time and text", () => {
  it.each([
    ["point", 25],
    ["noRest", 25],
    ["rest", 90],
    ["set", 120],
    ["over", null],
    [null, null],
  ] as const)("[SC37] a pause %s allows %s seconds", (pause, seconds) => {
    expect(secondsAllowed(pause)).toBe(seconds);
  });

  it("[SC37] takes the event's own times", () => {
    const own = { betweenPoints: 20, changeOfEnds: 60, setBreak: 90 };
    expect(secondsAllowed("rest", own)).toBe(60);
    expect(secondsAllowed("set", own)).toBe(90);
  });

  it("[SC39] writes a score from either side's view, with the loser's tie-break points", () => {
    const board = play(STANDARD, level(6), points("AAAAAAA"), games("AB"), points("AAB"));
    expect(scoreLine(board.state, "A")).toBe("7-6(0) 1-1 30-15");
    expect(scoreLine(board.state, "B")).toBe("6-7(0) 1-1 15-30");
  });

  it("[SC39] writes deuces, tie-breaks, match tie-breaks and ends", () => {
    expect(scoreLine(play(STANDARD).state, "A")).toBe("0-0 0-0");
    expect(scoreLine(play(STANDARD, points("ABABABB")).state, "A")).toBe("0-0 40-ad");
    expect(scoreLine(play(STANDARD, points("ABABABAB")).state, "A")).toBe("0-0 40-40");
    expect(scoreLine(play(STANDARD, level(6), points("AAB")).state, "B")).toBe("6-6 1-2");
    const rules = format({ finalSet: { kind: "matchTiebreak", to: 10 } });
    const oneAll = games("AAAAAABBBBBB");
    expect(scoreLine(play(rules, oneAll, points("AAB")).state, "A")).toBe("6-0 0-6 2-1");
    expect(scoreLine(play(rules, oneAll, points("B".repeat(10))).state, "A")).toBe("6-0 0-6 [0-10]");
    const retired = play(STANDARD, games("AAB"), points("A"), { type: "retire", side: "B" });
    expect(scoreLine(retired.state, "A")).toBe("2-1");
  });
});
