import { readFileSync } from "node:fs";
import type { Side } from "@courtloom/core";
import { describe, expect, it } from "vitest";
import { format as formatWith } from "../test-support/play.ts";
import type { FinalSet, MatchFormat } from "./format.ts";
import { createMatchChances } from "./match-chances.ts";
import { indexOf, otherIndex, type Pair, sideAt } from "./pair.ts";
import type { ScorePlace } from "./score-place.ts";
import { openerIn } from "./set-chances.ts";
import { isTiebreakDue, rulesOfSet } from "./set-rules.ts";
import { STARTING_SCORE } from "./standing.ts";
import { turnOfService } from "./tiebreak.ts";
import { createWinChances } from "./win-chances.ts";

interface Rules {
  readonly sets_to_win: number;
  readonly games_per_set: number;
  readonly tb_at: number | null;
  readonly tb_points: number;
  readonly no_ad?: boolean;
  readonly final?: { readonly type: "same" | "adv" | "mtb"; readonly tb_points?: number };
}

interface Case<Input, Expected> {
  readonly id: string;
  readonly input: Input;
  readonly expected: Expected;
  readonly tolerance: number;
}

const casesOf = <Input, Expected>(name: string): Case<Input, Expected>[] =>
  JSON.parse(readFileSync(new URL(`../../../shared/vectors/${name}.json`, import.meta.url), "utf8")).cases;

const FINALS: Record<"same" | "adv" | "mtb", (points: number) => FinalSet> = {
  same: () => ({ kind: "same" }),
  adv: () => ({ kind: "advantage" }),
  mtb: (to) => ({ kind: "matchTiebreak", to }),
};

const formatOf = (rules: Rules): MatchFormat => ({
  sets: rules.sets_to_win * 2 - 1,
  gamesPerSet: rules.games_per_set,
  tiebreakAt: rules.tb_at,
  tiebreakTo: rules.tb_points,
  noAd: rules.no_ad ?? false,
  finalSet: FINALS[rules.final?.type ?? "same"](rules.final?.tb_points ?? Number.NaN),
});

/** `opener` serves the first point of the game or tie-break at this score. */
function place(format: MatchFormat, setsWon: Pair, games: Pair, points: Pair, opener: Side): ScorePlace {
  const rules = rulesOfSet(format, setsWon);
  const turn = isTiebreakDue(rules, games) ? turnOfService(rules.tiebreak, points) : 0;
  const server = turn % 2 === 0 ? opener : sideAt(otherIndex(indexOf(opener)));
  return { setsWon, games, points, server, side: "deuce", over: false, winner: null };
}

const START = [0, 0] as const;
const ONE_SET = formatWith({ sets: 1 });
/** One game that is the whole match. */
const ONE_GAME = formatWith({ sets: 1, gamesPerSet: 1, gameLead: 1, tiebreakAt: null });

interface WinInput {
  readonly kind: "game" | "game_from" | "game_noad" | "tiebreak" | "set" | "match" | "set_score_dependent";
  readonly p: number;
  readonly pA: number;
  readonly pB: number;
  readonly to: number;
  readonly first_server: Side;
  readonly rules: Rules;
  readonly server_points: number;
  readonly receiver_points: number;
  readonly p_hold_level: number;
  readonly p_hold_ahead: number;
  readonly p_hold_behind: number;
  readonly tiebreak: number;
}

const gameWon = (noAd: boolean, p: number, points: Pair) => {
  const format = { ...ONE_GAME, noAd };
  return createWinChances(format, p, 0.5).ofA(place(format, START, START, points, "A"));
};

/** A set whose holds depend on the score: the tree over games takes any chance of a game. */
function scoreDependentSet(input: WinInput): number {
  const rules = rulesOfSet(ONE_SET, START);
  const chance = createMatchChances(ONE_SET, (standing) => {
    if (isTiebreakDue(rules, standing.games)) return input.tiebreak;
    const server = openerIn(standing);
    const lead = standing.games[server] - standing.games[otherIndex(server)];
    const hold = lead === 0 ? input.p_hold_level : lead > 0 ? input.p_hold_ahead : input.p_hold_behind;
    return server === 0 ? hold : 1 - hold;
  });
  return chance({ ...STARTING_SCORE, rules, pairs: null, gamesPlayed: indexOf(input.first_server) });
}

const fromStart = (format: MatchFormat, { pA, pB, first_server }: WinInput) =>
  createWinChances(format, pA, pB).ofA(place(format, START, START, START, first_server));

const ANSWERS: Record<WinInput["kind"], (input: WinInput) => number | undefined> = {
  game: ({ p }) => gameWon(false, p, START),
  game_from: (input) => gameWon(false, input.p, [input.server_points, input.receiver_points]),
  game_noad: ({ p }) => gameWon(true, p, START),
  tiebreak: (input) => fromStart({ ...ONE_SET, finalSet: { kind: "matchTiebreak", to: input.to } }, input),
  set: (input) => fromStart(ONE_SET, input),
  match: (input) => fromStart(formatOf(input.rules), input),
  set_score_dependent: scoreDependentSet,
};

describe("the chance to win a game, a tie-break, a set and a match", () => {
  const cases = casesOf<WinInput, { win: number }>("tennis-win-probability");

  it("has read the file", () => expect(cases.length).toBe(55));

  it.each(cases)("[W1] [W2] [W3] [W4] $id $input.kind within its tolerance", (one) => {
    const won = ANSWERS[one.input.kind](one.input) ?? Number.NaN;
    expect(Math.abs(won - one.expected.win)).toBeLessThanOrEqual(one.tolerance);
  });
});

interface ImportanceInput {
  readonly kind: "importance_in_game" | "importance_in_match";
  readonly p: number;
  readonly pA: number;
  readonly pB: number;
  readonly rules: Rules;
  readonly state: Record<"setsA" | "setsB" | "gamesA" | "gamesB" | "pointsA" | "pointsB", number> & {
    readonly server: Side;
  };
}

const NAMED: Record<string, Pair> = { deuce: [3, 3], adv_server: [4, 3], adv_receiver: [3, 4] };

const pointsOf = (key: string): Pair => {
  const [server = Number.NaN, receiver = Number.NaN] = key.split("-").map(Number);
  return NAMED[key] ?? [server, receiver];
};

describe("importance of a point", () => {
  const cases = casesOf<ImportanceInput, Record<string, number>>("point-importance");
  const inGame = cases.filter((one) => one.input.kind === "importance_in_game");
  const inMatch = cases.filter((one) => one.input.kind === "importance_in_match");

  it("has read the file", () => expect([inGame.length, inMatch.length]).toEqual([4, 44]));

  it.each(inGame)("[W6] $id in its game within its tolerance, whoever serves", (one) => {
    const { p } = one.input;
    expect(Object.keys(one.expected).length).toBe(18);
    for (const [key, expected] of Object.entries(one.expected)) {
      const [server, receiver] = pointsOf(key);
      const byA = createWinChances(formatWith(), p, 0.5).importance(
        place(formatWith(), START, START, [server, receiver], "A"),
      );
      const byB = createWinChances(formatWith(), 0.5, p).importance(
        place(formatWith(), START, START, [receiver, server], "B"),
      );
      for (const found of [byA?.inGame, byB?.inGame])
        expect(Math.abs((found ?? Number.NaN) - expected)).toBeLessThanOrEqual(one.tolerance);
    }
  });

  it.each(inMatch)("[W1] [W5] $id in its match within its tolerance", (one) => {
    const { rules, pA, pB, state } = one.input;
    const format = formatOf(rules);
    const chances = createWinChances(format, pA, pB);
    const score = place(
      format,
      [state.setsA, state.setsB],
      [state.gamesA, state.gamesB],
      [state.pointsA, state.pointsB],
      state.server,
    );
    const found = { win: chances.ofA(score), importance: chances.importance(score)?.inMatch };
    for (const name of ["win", "importance"] as const) {
      const off = Math.abs((found[name] ?? Number.NaN) - (one.expected[name] ?? Number.NaN));
      expect(off).toBeLessThanOrEqual(one.tolerance);
    }
  });
});
