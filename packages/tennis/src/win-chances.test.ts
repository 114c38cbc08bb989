import { otherSide, SIDES, type Side } from "@courtloom/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFormat, anySetup, side, somePoints } from "../test-support/arbitraries.ts";
import { format, games, level, next, play, point, points } from "../test-support/play.ts";
import type { FinalSet, MatchFormat } from "./format.ts";
import { createMatchChances } from "./match-chances.ts";
import { LOVE } from "./pair.ts";
import { type ScoreBoard, startScore } from "./score-board.ts";
import type { ScoreEvent } from "./score-event.ts";
import { rulesOfSet } from "./set-rules.ts";
import { STARTING_SCORE, type Standing } from "./standing.ts";
import { createWinChances, type WinChances } from "./win-chances.ts";

/** Fixed, so that a failure comes back; the seed is printed with it. */
const RUNS = { seed: 20261125, numRuns: 150 };
const chance = fc.double({ min: 0.05, max: 0.95, noNaN: true });

function boardsOf(setup: Parameters<typeof startScore>[0], events: readonly ScoreEvent[]): ScoreBoard[] {
  const boards: ScoreBoard[] = [];
  const start = startScore(setup);
  if (!start.ok) throw new Error(JSON.stringify(start.error));
  let board = start.value;
  boards.push(board);
  for (const event of events) {
    if (board.state.over) break;
    board = next(board, event);
    boards.push(board);
  }
  return boards;
}

const known = (value: number | undefined): number => value ?? Number.NaN;

/** The chance is the mean of those after the point, and its importance is what lies between them. */
function expectFair(chances: WinChances, board: ScoreBoard, pA: number, pB: number): void {
  const won = known(chances.ofA(next(board, point("A")).state));
  const lost = known(chances.ofA(next(board, point("B")).state));
  const p = board.state.server === "A" ? pA : 1 - pB;
  expect(known(chances.ofA(board.state))).toBeCloseTo(p * won + (1 - p) * lost, 11);
  const importance = known(chances.importance(board.state)?.inMatch);
  expect(importance).toBeCloseTo(won - lost, 11);
  expect(importance).toBeGreaterThanOrEqual(0);
  expect(importance).toBeLessThanOrEqual(1);
}

describe("any format, any points", () => {
  it("[W1] [W5] is at each score what the scoring makes of its next point, and 1 or 0 at the end", () => {
    fc.assert(
      fc.property(anySetup, somePoints(150), chance, chance, (setup, events, pA, pB) => {
        const chances = createWinChances(setup.format, pA, pB);
        for (const board of boardsOf(setup, events)) {
          if (board.state.over) expect(chances.ofA(board.state)).toBe(board.state.winner === "A" ? 1 : 0);
          else expectFair(chances, board, pA, pB);
        }
      }),
      RUNS,
    );
  });

  it("[W1] is the other side's when the sides change names", () => {
    const turned = (events: readonly ScoreEvent[]) =>
      events.map((event): ScoreEvent => (event.type === "point" ? point(otherSide(event.winner)) : event));
    fc.assert(
      fc.property(anySetup, somePoints(60), chance, chance, (setup, events, pA, pB) => {
        const mine = boardsOf(setup, events).at(-1) as ScoreBoard;
        const { doublesOrder: _, ...singles } = setup;
        const theirs = boardsOf({ ...singles, firstServer: otherSide(setup.firstServer) }, turned(events));
        const a = known(createWinChances(setup.format, pA, pB).ofA(mine.state));
        const b = known(createWinChances(setup.format, pB, pA).ofA((theirs.at(-1) as ScoreBoard).state));
        expect(a).toBeCloseTo(1 - b, 11);
      }),
      RUNS,
    );
  });
});

/** A lead of two everywhere and service in turn: neither side ever serves more of what counts. */
const isEven = ({ finalSet, ...rules }: MatchFormat): boolean =>
  (rules.gameLead ?? 2) === 2 &&
  (rules.tiebreakWinBy ?? 2) === 2 &&
  (rules.tieBreakOnly?.winBy ?? 2) === 2 &&
  (!("winBy" in finalSet) || (finalSet.winBy ?? 2) === 2) &&
  (rules.tbServe ?? "oneThenTwo") === "oneThenTwo" &&
  (rules.matchTiebreakServe ?? rules.tbServe ?? "oneThenTwo") === "oneThenTwo" &&
  (rules.fixedGames === undefined || hasTiebreakAtHalf(rules.fixedGames, finalSet));

/** Else the last of an even number of games is followed, when they are shared, by one that decides. */
const hasTiebreakAtHalf = (fixedGames: number, finalSet: FinalSet): boolean =>
  fixedGames % 2 === 0 && (finalSet.kind === "same" || finalSet.kind === "matchTiebreak");

const startOf = (rules: MatchFormat, firstServer: Side) =>
  (boardsOf({ format: rules, firstServer }, [])[0] as ScoreBoard).state;

describe("who serves first", () => {
  it("[W7] does not matter where every lead is of two and service goes in turn", () => {
    fc.assert(
      fc.property(anyFormat.filter(isEven), chance, chance, (rules, pA, pB) => {
        const chances = createWinChances(rules, pA, pB);
        const [a, b] = SIDES.map((first) => chances.ofA(startOf(rules, first)));
        expect(known(a)).toBeCloseTo(known(b), 12);
      }),
      RUNS,
    );
  });

  it("[W7] matters where one side serves more of what counts", () => {
    const nine = format({ sets: 1, tieBreakOnly: { to: 5, winBy: 1 } });
    const pairs = format({ sets: 1, tieBreakOnly: { to: 7 }, tbServe: "pairs" });
    const five = format({ sets: 1, fixedGames: 5, tiebreakAt: null });
    for (const rules of [nine, pairs, five]) {
      const chances = createWinChances(rules, 0.65, 0.65);
      const [a, b] = SIDES.map((first) => known(chances.ofA(startOf(rules, first))));
      expect(Math.abs(known(a) - known(b))).toBeGreaterThan(0.001);
      expect(known(a) + known(b)).toBeCloseTo(1, 12);
    }
  });
});

/** The set in play as a match of its own. */
function setAlone(rules: MatchFormat, board: ScoreBoard): MatchFormat {
  const [a, b] = board.state.setsWon;
  const isFinal = a === b && a === Math.floor(rules.sets / 2);
  return { ...rules, sets: 1, finalSet: isFinal ? rules.finalSet : { kind: "same" } };
}

/** What winning the game in play is worth in its set, by the chances after it. */
function gameInSet(board: ScoreBoard, alone: WinChances): number {
  const [ifA, ifB] = SIDES.map((winner) => {
    const { state } = next(board, { type: "gamePenalty", against: otherSide(winner) });
    // In a set of so many games the last game's winner need not be the set's.
    if (state.sets.length > board.state.sets.length) return state.setsWon[0] - board.state.setsWon[0];
    return known(alone.ofA({ ...state, setsWon: LOVE }));
  });
  return known(ifA) - known(ifB);
}

/** What winning the set in play is worth in the match, by the chances after it. */
function setInMatch(board: ScoreBoard, chances: WinChances): number {
  const [ifA, ifB] = SIDES.map((winner) => {
    const won: [number, number] = winner === "A" ? [6, 0] : [0, 6];
    const sets = [...board.state.sets, won];
    return known(chances.ofA(next(board, { type: "setScore", sets, games: LOVE, points: LOVE }).state));
  });
  return known(ifA) - known(ifB);
}

describe("importance", () => {
  it("[W6] in the match is that of the point in its game, of the game in its set, of the set in the match", () => {
    const setup = fc.record({ format: anyFormat.filter(isEven), firstServer: side });
    fc.assert(
      fc.property(setup, somePoints(120), chance, chance, (given, events, pA, pB) => {
        const chances = createWinChances(given.format, pA, pB);
        for (const board of boardsOf(given, events).slice(-25)) {
          if (board.state.over) continue;
          const found = chances.importance(board.state);
          const alone = createWinChances(setAlone(given.format, board), pA, pB);
          const product = known(found?.inGame) * gameInSet(board, alone) * setInMatch(board, chances);
          expect(known(found?.inMatch)).toBeCloseTo(product, 12);
        }
      }),
      { ...RUNS, numRuns: 100 },
    );
  });

  it("[W5] is 1 at a deciding point of the whole match, and 0 where the set is won already", () => {
    const last = play(
      format({ sets: 1, noAd: true, gameLead: 1, tiebreakAt: null }),
      level(5),
      points("ABABAB"),
    );
    expect(last.state.call).toBe("deciding");
    const rules = last.setup.format;
    expect(createWinChances(rules, 0.6, 0.5).importance(last.state)).toEqual({ inMatch: 1, inGame: 1 });
    expect(createWinChances(rules, 0.6, 0.5).ofA(last.state)).toBeCloseTo(0.6, 12);
    const lost = play(format({ sets: 1, fixedGames: 7, tiebreakAt: null }), games("AAAA"));
    const dead = createWinChances(lost.setup.format, 0.6, 0.5);
    expect(dead.importance(lost.state)).toMatchObject({ inMatch: 0 });
    expect(dead.ofA(lost.state)).toBeCloseTo(1, 12);
  });
});

describe("stated scores, ends and bells", () => {
  const rules = format();
  const chances = createWinChances(rules, 0.62, 0.58);

  it("[W8] takes a stated score as it stands, however far beyond the usual", () => {
    const far = play(format({ finalSet: { kind: "advantage" } }), {
      type: "setScore",
      sets: [
        [6, 4],
        [4, 6],
      ],
      games: [70, 70],
      points: [5, 5],
    });
    const near = next(far, { type: "setScore", games: [6, 6], points: [3, 3] });
    const own = createWinChances(far.setup.format, 0.62, 0.58);
    expect(known(own.ofA(far.state))).toBeCloseTo(known(own.ofA(near.state)), 12);
    expectFair(own, far, 0.62, 0.58);
    const late = play(rules, { type: "setScore", games: [6, 6], points: [40, 40] });
    expectFair(chances, late, 0.62, 0.58);
  });

  it("[W8] knows the end, and says nothing of a match without a winner", () => {
    const retired = play(rules, points("AAB"), { type: "retire", side: "A" });
    expect(chances.ofA(retired.state)).toBe(0);
    expect(chances.importance(retired.state)).toBeUndefined();
    const unplayed = play(rules, { type: "unplayed" });
    expect(chances.ofA(unplayed.state)).toBeUndefined();
  });

  it("[W9] rests all on the point that decides the match after the bell", () => {
    const policy = { unfinishedGame: "ignored", drawAllowed: false } as const;
    const bell = play(rules, games("AB"), { type: "timeUp", policy });
    expect(bell.state).toMatchObject({ over: false, server: "A", points: [0, 0] });
    expect(chances.importance(bell.state)).toEqual({ inMatch: 1, inGame: 1 });
    expect(chances.ofA(bell.state)).toBe(0.62);
  });

  it("[W9] says nothing of the point that decides a game after the bell", () => {
    const policy = { unfinishedGame: "decidingPoint" } as const;
    const bell = play(rules, games("A"), points("AB"), { type: "timeUp", policy });
    expect(bell.state).toMatchObject({ over: false, points: [1, 1], side: "receiver-chooses" });
    expect(chances.ofA(bell.state)).toBeUndefined();
    expect(chances.importance(bell.state)).toBeUndefined();
  });

  it("[W1] refuses a chance on serve that nobody has", () => {
    for (const p of [0, 1, -0.1, Number.NaN])
      expect(() => createWinChances(rules, 0.6, p)).toThrow("lies between 0 and 1");
  });
});

describe("cost", () => {
  const startOfMatch = (rules: MatchFormat): Standing => ({
    ...STARTING_SCORE,
    rules: rulesOfSet(rules, LOVE),
    pairs: null,
  });

  it("[W4] works out each standing of a set once, for all sets of a match of five", () => {
    const rules = format({ sets: 5 });
    let asked = 0;
    const chanceOfA = createMatchChances(rules, () => {
      asked++;
      return 0.7;
    });
    chanceOfA(startOfMatch(rules));
    expect(asked).toBeGreaterThan(50);
    expect(asked).toBeLessThan(120);
    chanceOfA(startOfMatch(rules));
    expect(asked).toBeLessThan(120);
  });

  it("[W4] ends for the longest match that can be written", () => {
    const longest = { sets: 5, gamesPerSet: 200, tiebreakAt: 200, tiebreakTo: 200, noAd: 200 };
    const won = createWinChances(format(longest), 0.61, 0.6).ofA(startOf(format(longest), "B"));
    expect(known(won)).toBeGreaterThan(0.7);
    expect(known(won)).toBeLessThan(1);
  });
});
