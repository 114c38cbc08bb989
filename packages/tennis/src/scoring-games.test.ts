import { describe, expect, it } from "vitest";
import { format, games, level, play, points, STANDARD } from "../test-support/play.ts";

const state = (...args: Parameters<typeof play>) => play(...args).state;

describe("games", () => {
  it("[SC5] ends an advantage game only two points clear, however long it lasts", () => {
    const long = points("AB".repeat(40));
    expect(state(STANDARD, long)).toMatchObject({ points: [40, 40], call: "deuce", games: [0, 0] });
    expect(state(STANDARD, long, points("B"))).toMatchObject({ call: "ad-out", side: "ad" });
    expect(state(STANDARD, long, points("BB"))).toMatchObject({ games: [0, 1], points: [0, 0] });
  });

  it("[SC2] calls the server first, whoever serves", () => {
    expect(state(STANDARD, points("AAA")).call).toBe("40-0");
    expect(state({ format: STANDARD, firstServer: "B" }, points("AAA")).call).toBe("0-40");
    expect(state({ format: STANDARD, firstServer: "B" }, points("AAABBBA")).call).toBe("ad-out");
  });

  it.each([
    [true, 0],
    [1, 0],
    [2, 1],
    [3, 2],
  ])(
    "[F6] [SC3] with no-ad %s plays %i deuces with advantage before the deciding point",
    (noAd, ordinary) => {
      const rules = format({ noAd });
      const before = points(`ABABAB${"AB".repeat(ordinary)}`);
      expect(state(rules, before)).toMatchObject({ call: "deciding", side: "receiver-chooses" });
      expect(state(rules, before, points("B"))).toMatchObject({ games: [0, 1], server: "B" });
      if (ordinary > 0) {
        const first = state(rules, points("ABABAB"));
        expect(first).toMatchObject({ call: "deuce", side: "deuce" });
        expect(state(rules, points("ABABABA")).call).toBe("ad-in");
        expect(state(rules, points("ABABABAA")).games).toEqual([1, 0]);
      }
    },
  );

  it("[SC4] serves from the right half when an even number of points was played", () => {
    const sides = ["", "A", "AB", "ABA"].map((letters) => state(STANDARD, points(letters)).side);
    expect(sides).toEqual(["deuce", "ad", "deuce", "ad"]);
  });
});

describe("sets", () => {
  it.each([
    ["6-5 is not won", level(5), games("A"), [6, 5], []],
    ["7-5 is", level(5), games("AA"), [0, 0], [[7, 5]]],
    ["6-6 is a tie-break", level(5), games("AB"), [6, 6], []],
  ] as const)("[SC6] %s", (_title, first, then, inSet, sets) => {
    const now = state(STANDARD, [...first], [...then]);
    expect(now).toMatchObject({ games: inSet, sets });
    expect(now.tieBreak).toBe(inSet[0] === 6 && inSet[1] === 6);
  });

  it("[SC8] plays an advantage set out and records its true figure", () => {
    const rules = format({ sets: 1, tiebreakAt: null });
    expect(state(rules, level(20))).toMatchObject({ games: [20, 20], tieBreak: false });
    expect(state(rules, level(20), games("AA"))).toMatchObject({ sets: [[22, 20]], winner: "A" });
  });

  it("[F7] plays only the final set as an advantage set", () => {
    const rules = format({ finalSet: { kind: "advantage" } });
    const first = [...level(6), ...points("AAAAAAA")];
    expect(state(rules, level(6)).tieBreak).toBe(true);
    const third = state(rules, first, games("BBBBBB"), level(8));
    expect(third).toMatchObject({
      games: [8, 8],
      tieBreak: false,
      sets: [
        [7, 6, 0],
        [0, 6],
      ],
    });
    expect(state(rules, first, games("BBBBBB"), level(8), games("BB"))).toMatchObject({
      winner: "B",
      sets: [
        [7, 6, 0],
        [0, 6],
        [8, 10],
      ],
    });
  });

  it("[F8] plays the final set's tie-break where and as long as the format says", () => {
    const finalSet = { kind: "tiebreak", tiebreakAt: 12, tiebreakTo: 10, winBy: 1 } as const;
    const rules = format({ sets: 1, finalSet });
    expect(state(rules, level(6)).tieBreak).toBe(false);
    const nineAll = [...level(12), ...points("AB".repeat(9))];
    expect(state(rules, nineAll)).toMatchObject({ tieBreak: true, call: "deciding" });
    expect(state(rules, nineAll, points("B"))).toMatchObject({ sets: [[12, 13, 9]], winner: "B" });
  });

  it("[F8] needs two clear points in the final set's own tie-break unless it says one", () => {
    const finalSet = { kind: "tiebreak", tiebreakAt: 6, tiebreakTo: 7 } as const;
    const sixAll = [...level(6), ...points("AB".repeat(6))];
    const rules = format({ sets: 1, finalSet, tiebreakWinBy: 1 });
    expect(state(rules, sixAll).call).toBe("6-6");
    expect(state(rules, sixAll, points("A")).over).toBe(false);
    expect(state(rules, sixAll, points("AA")).sets).toEqual([[7, 6, 6]]);
  });

  it("[F11] wins a set to six without a lead, and one of a fixed number of games by the most games", () => {
    const short = format({ sets: 1, gameLead: 1, tiebreakAt: null });
    expect(state(short, level(5), games("B"))).toMatchObject({ sets: [[5, 6]], over: true });
    const seven = format({ sets: 1, fixedGames: 7, tiebreakAt: null });
    expect(state(seven, games("AAAAA"))).toMatchObject({ games: [5, 0], over: false });
    expect(state(seven, games("AAAAABB"))).toMatchObject({ sets: [[5, 2]], winner: "A" });
    const eight = format({ sets: 1, fixedGames: 8, tiebreakAt: 4 });
    expect(state(eight, level(4)).tieBreak).toBe(true);
    expect(state(eight, games("AAAAABBB"))).toMatchObject({ sets: [[5, 3]] });
  });

  it("[F4] has the tie-break at five all when the format says so", () => {
    const rules = format({ sets: 1, tiebreakAt: 5 });
    expect(state(rules, level(5), points("AAAAAAA"))).toMatchObject({ sets: [[6, 5, 0]], winner: "A" });
  });

  it("[SC12] gives a set that went on beyond 6-6 by mistake its tie-break at 8-8", () => {
    const beyond = play(STANDARD, level(6), { type: "setScore", games: [7, 6], points: [0, 0] });
    expect(beyond.state).toMatchObject({ games: [7, 6], tieBreak: false });
    const stated = { type: "setScore", games: [7, 6], points: [0, 0] } as const;
    expect(state(STANDARD, level(6), stated, games("B"))).toMatchObject({ games: [7, 7], tieBreak: false });
    expect(state(STANDARD, level(6), stated, games("BAB"))).toMatchObject({ games: [8, 8], tieBreak: true });
    expect(state(STANDARD, level(6), stated, games("A"))).toMatchObject({ sets: [[8, 6]] });
  });
});

describe("matches", () => {
  it.each([
    [1, 1],
    [3, 2],
    [5, 3],
  ])("[F3] [SC9] best of %i is won with %i sets", (sets, needed) => {
    const rules = format({ sets });
    const almost = games("A".repeat(6 * needed - 1));
    expect(state(rules, almost).over).toBe(false);
    const end = state(rules, almost, games("A"));
    expect(end).toMatchObject({ over: true, winner: "A", status: "completed", pause: "over", call: "match" });
    expect(end.setsWon).toEqual([needed, 0]);
  });

  it("[F9] in best of five plays the match tie-break at two sets all only", () => {
    const rules = format({ sets: 5, finalSet: { kind: "matchTiebreak", to: 7 } });
    const twoAll = games("A".repeat(6) + "B".repeat(6) + "A".repeat(6) + "B".repeat(6));
    expect(state(rules, games("A".repeat(6) + "B".repeat(6))).matchTieBreak).toBe(false);
    expect(state(rules, twoAll)).toMatchObject({ matchTieBreak: true, tieBreak: true, setsWon: [2, 2] });
    expect(state(rules, twoAll, points("AAAAAAA"))).toMatchObject({
      sets: [
        [6, 0],
        [0, 6],
        [6, 0],
        [0, 6],
        [7, 0, "MTB"],
      ],
      winner: "A",
    });
  });

  it("[F10] counts each tie-break of a match of tie-breaks as a set of one game", () => {
    const rules = format({ tieBreakOnly: { to: 7 }, finalSet: { kind: "matchTiebreak", to: 10 } });
    const one = state(rules, points("AAAAAAA"));
    expect(one).toMatchObject({
      sets: [[7, 0, "MTB"]],
      server: "B",
      endsDue: true,
      pause: "set",
      changesOfEnds: 2,
    });
    const two = state(rules, points(`${"A".repeat(7)}${"B".repeat(7)}`));
    expect(two).toMatchObject({ server: "A", matchTieBreak: true, setsWon: [1, 1] });
    expect(state(rules, points(`${"A".repeat(7)}${"B".repeat(7)}${"A".repeat(7)}`)).over).toBe(false);
    expect(state(rules, points(`${"A".repeat(7)}${"B".repeat(7)}${"A".repeat(10)}`)).winner).toBe("A");
  });

  it("[F16] scores a match without lets on serve like any other", () => {
    const lively = state(format({ noLet: true }), level(3));
    expect(lively).toEqual(state(STANDARD, level(3)));
  });
});
