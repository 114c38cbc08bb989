import { describe, expect, it } from "vitest";
import { format, games, level, next, play, point, points } from "../test-support/play.ts";
import type { MatchFormat } from "./format.ts";

/** Who serves each point of a first tie-break while the points are shared. */
function servers(rules: MatchFormat, lead: ReturnType<typeof level>, count: number): string {
  let board = play(rules, lead);
  let order = "";
  for (let k = 0; k < count; k++) {
    order += board.state.server;
    board = next(board, point(k % 2 === 0 ? "A" : "B"));
  }
  return order;
}

/** After which points of the tie-break ends change. */
function changes(rules: MatchFormat, lead: ReturnType<typeof level>, count: number): number[] {
  const after: number[] = [];
  let board = play(rules, lead);
  for (let k = 1; k <= count; k++) {
    board = next(board, point(k % 2 === 1 ? "A" : "B"));
    if (board.state.endsDue) after.push(k);
  }
  return after;
}

const SHORT_TO_FIVE: Partial<MatchFormat> = {
  sets: 3,
  gamesPerSet: 4,
  tiebreakAt: 4,
  tiebreakTo: 5,
  tiebreakWinBy: 1,
  noAd: true,
};

describe("tie-breaks", () => {
  it("[SC14] serves one point, then two each", () => {
    expect(servers(format(), level(6), 13)).toBe("ABBAABBAABBAA");
  });

  it("[F13] [SC14] serves in pairs; the deciding point stays with the side that served the pair before", () => {
    const rules = format({ ...SHORT_TO_FIVE, tbServe: "pairs" });
    expect(servers(rules, level(4), 8)).toBe("AABBAABB");
    const decider = play(rules, level(4), points("ABABABAB")).state;
    expect(decider).toMatchObject({
      server: "B",
      call: "deciding",
      side: "receiver-chooses",
      points: [4, 4],
    });
    const won = next(play(rules, level(4), points("ABABABAB")), point("A")).state;
    expect(won).toMatchObject({ sets: [[5, 4, 4]], server: "B", endsDue: true, pause: "set" });
  });

  it("[SC14] serves in pairs without end when two clear points are needed", () => {
    expect(servers(format({ tbServe: "pairs" }), level(6), 17)).toBe("AABBAABBAABBAABBA");
  });

  it.each([
    ["six", [6, 12]],
    ["coman", [1, 5, 9, 13]],
    ["everyFour", [4, 8, 12]],
    ["firstFour", [4]],
    ["none", []],
  ] as const)("[F12] [SC15] order of ends %s changes after %j", (tbEnds, expected) => {
    expect(changes(format({ tbEnds }), level(6), 15)).toEqual(expected);
  });

  it("[SC15] keeps the same order of ends in a match tie-break, unless it has its own", () => {
    const finalSet = { kind: "matchTiebreak", to: 10 } as const;
    const oneAll = games("AAAAAABBBBBB");
    expect(changes(format({ finalSet, tbEnds: "coman" }), oneAll, 14)).toEqual([1, 5, 9, 13]);
    const own = format({
      finalSet,
      tbEnds: "firstFour",
      matchTiebreakEnds: "six",
      matchTiebreakServe: "pairs",
    });
    expect(changes(own, oneAll, 14)).toEqual([6, 12]);
    expect(servers(own, oneAll, 6)).toBe("AABBAA");
  });

  it("[F14] leaves an ordinary tie-break alone when only the match tie-break has its own settings", () => {
    const own = format({ matchTiebreakEnds: "everyFour", matchTiebreakServe: "pairs" });
    expect(changes(own, level(6), 12)).toEqual([6, 12]);
    expect(servers(own, level(6), 5)).toBe("ABBAA");
  });

  it("[SC15] changes ends once when the last point of a set would also bring a change", () => {
    const before = play(format({ tbEnds: "coman" }), level(6), points("ABABABA"), points("AA"));
    expect(before.state.points).toEqual([6, 3]);
    expect(before.state).toMatchObject({ endsDue: true, changesOfEnds: 9 });
    expect(next(before, point("A")).state).toMatchObject({ changesOfEnds: 10, endsDue: true, pause: "set" });
  });

  it.each([
    [7, 2, `${"A".repeat(6) + "B".repeat(6)}A`, null],
    [7, 2, `${"A".repeat(6) + "B".repeat(6)}AA`, [7, 6, 6]],
    [7, 2, "B".repeat(7), [6, 7, 0]],
    [10, 2, `${"A".repeat(9) + "B".repeat(3)}A`, [7, 6, 3]],
    [7, 1, "A".repeat(6) + "B".repeat(7), [6, 7, 6]],
  ] as const)("[F5] [SC7] to %i by %i, after %s the set is %j", (tiebreakTo, tiebreakWinBy, letters, set) => {
    const { sets } = play(format({ tiebreakTo, tiebreakWinBy }), level(6), points(letters)).state;
    expect(sets).toEqual(set === null ? [] : [set]);
  });

  it("[SC21] pauses: none at the start, no rest after game one and within tie-breaks, a rest at odd games", () => {
    const pauses = [0, 1, 2, 3, 4, 5].map(
      (n) => play(format(), games("AB".repeat(3).slice(0, n))).state.pause,
    );
    expect(pauses).toEqual([null, "noRest", "point", "rest", "point", "rest"]);
    expect(play(format(), level(6), points("ABABAB")).state.pause).toBe("noRest");
    expect(play(format(), games("AAAAAA")).state.pause).toBe("set");
  });

  it("[SC11] decides a tie-break of one clear point at one short", () => {
    const rules = format(SHORT_TO_FIVE);
    expect(play(rules, level(4), points("AAABBB")).state.call).toBe("3-3");
    expect(play(rules, level(4), points("AAAABBBB")).state.call).toBe("deciding");
    expect(play(rules, level(4), points("AAAABBBBB")).state.sets).toEqual([[4, 5, 4]]);
  });

  it("[SC17] lets the side that did not open the tie-break open the next set", () => {
    const after = play(format(), level(6), points("BBBBBBB"));
    expect(after.state).toMatchObject({ sets: [[6, 7, 0]], server: "B" });
    const opened = play({ format: format(), firstServer: "B" }, level(6), points("BBBBBBB"));
    expect(opened.state.server).toBe("A");
  });

  it("[SC15] [F15] changes ends at set ends only, and not within a tie-break, when the event plays so", () => {
    const rules = format({ ends: "setEnds" });
    expect(changes(rules, level(6), 12)).toEqual([]);
    const evenSet = play(rules, games("AAAAAA"));
    expect(evenSet.state).toMatchObject({ endsDue: true, changesOfEnds: 1, pause: "set" });
    expect(play(rules, games("AAAAAAA")).state).toMatchObject({ endsDue: false, pause: "point" });
    expect(changes(format({ ends: "setEnds", tbEnds: "six" }), level(6), 12)).toEqual([6, 12]);
  });
});
