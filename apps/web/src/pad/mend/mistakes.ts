import type { Side } from "@courtloom/core";
import type { EntryBody, Fact, Point, Shot } from "@courtloom/match-log";
import { idAt, pointTo } from "@courtloom/match-log/testing";
import * as mend from "./mend-point.ts";

/** A mistake or an argument on court: the match as it was charted and then mended, and as it would have been charted right. */
export interface Mistake {
  readonly name: string;
  readonly charted: readonly EntryBody[];
  readonly mended: readonly EntryBody[];
  readonly right: readonly EntryBody[];
}

const won = (letters: string): readonly EntryBody[] =>
  [...letters].map((letter) => pointTo(letter === "A" ? "A" : "B"));
const game = (side: Side): readonly EntryBody[] => won(side.repeat(4));
const games = (sides: string): readonly EntryBody[] => [...sides].flatMap((side) => game(side as Side));
const deuce = won("AAABBB");

/** Entry id of the nth charted fact, from 1: the opening is at pos 1. */
const nth = (n: number): string => idAt(n + 1);

const line = (changes: Partial<Shot> = {}): Shot => ({
  striker: "A",
  from: { right: 300, away: -1300 },
  to: { right: 300, away: 1000 },
  ...changes,
});
const drawn = (changes: Partial<Point> = {}): Point => ({
  winner: "A",
  level: "every",
  seat: "behind",
  endOfA: "near",
  serve: { outcome: "firstIn", faults: 0 },
  shots: [
    { striker: "B", from: { right: -200, away: 1250 }, to: { right: 250, away: -900 } },
    line({ result: "winner" }),
  ],
  ...changes,
});
const charted = (point: Point): EntryBody => ({ kind: "PointCharted", point });
const missed = drawn({
  winner: "B",
  shots: [...drawn().shots.slice(0, 1), line({ result: "missed", miss: "long" })],
});
const server = (to: Side, slip: "players" | "chartist"): Fact => ({ kind: "ServerStated", to, slip });
const put = (before: string, fact: Fact): EntryBody => ({ kind: "EntryInserted", before, fact });
const stated = (score: Extract<Fact, { kind: "ScoreStated" }>["score"], isMissed = false): Fact => ({
  kind: "ScoreStated",
  score,
  missed: isMissed,
});

export const MISTAKES: readonly Mistake[] = [
  {
    name: "my slip: the wrong first server, seen at once",
    charted: won("A"),
    mended: [mend.serverSince(nth(1), "B")],
    right: [server("B", "chartist"), ...won("A")],
  },
  {
    name: "my slip: the wrong server, found two games later",
    charted: [...games("AB"), ...won("AB")],
    mended: [mend.serverSince(nth(1), "B")],
    right: [server("B", "chartist"), ...games("AB"), ...won("AB")],
  },
  {
    name: "the players' slip: the wrong server in a game, points stand",
    charted: [...game("A"), ...won("AB")],
    mended: [server("A", "players")],
    right: [...game("A"), ...won("AB"), server("A", "players")],
  },
  {
    name: "the players' slip, found two games later: the order stays as altered from its game on",
    charted: [...games("ABA"), ...won("B")],
    mended: [put(nth(5), server("A", "players"))],
    right: [...game("A"), server("A", "players"), ...games("BA"), ...won("B")],
  },
  {
    name: "the wrong server in a tie-break, put right after an even number of points",
    charted: [...games("ABABABABABAB"), ...won("AB")],
    mended: [put(nth(49), server("B", "players"))],
    right: [...games("ABABABABABAB"), server("B", "players"), ...won("AB")],
  },
  {
    name: "the wrong server in a tie-break, found after an odd number of points",
    charted: [...games("ABABABABABAB"), ...won("ABA")],
    mended: [server("A", "players")],
    right: [...games("ABABABABABAB"), ...won("ABA"), server("A", "players")],
  },
  {
    name: "ends seen wrongly for a game",
    charted: [...game("A"), charted(drawn({ endOfA: "near" })), charted({ ...missed, endOfA: "near" })],
    mended: [mend.endsSince(nth(5), "near")],
    right: [...game("A"), charted(drawn({ endOfA: "far" })), charted({ ...missed, endOfA: "far" })],
  },
  {
    name: "ends seen wrongly since the start",
    charted: [charted(drawn()), charted(missed)],
    mended: [mend.endsSince(nth(1), "near")],
    right: [charted(drawn({ endOfA: "far" })), charted({ ...missed, endOfA: "far" })],
  },
  {
    name: "a point missed",
    charted: won("ABA"),
    mended: [mend.pointPutIn({ id: nth(2), point: drawn() }, "B")],
    right: won("ABBA"),
  },
  {
    name: "a whole game missed",
    charted: [...game("A"), ...won("AB")],
    mended: [put(nth(5), stated({ games: [1, 1], points: [0, 0] }, true))],
    right: [...games("AB"), ...won("AB")],
  },
  {
    name: "three games missed",
    charted: [...game("A"), charted(drawn())],
    mended: [put(nth(5), stated({ games: [2, 2], points: [0, 0] }, true))],
    right: [...games("ABBA"), charted(drawn())],
  },
  {
    name: "a set missed",
    charted: [...won("AB")],
    mended: [put(nth(1), stated({ sets: [[6, 0]], games: [0, 0], points: [0, 0] }, true))],
    right: [...games("AAAAAA"), ...won("AB")],
  },
  {
    name: "a let counted as a point",
    charted: won("ABA"),
    mended: [mend.takenOut(nth(2))],
    right: won("AA"),
  },
  {
    name: "a point counted twice",
    charted: [charted(missed), charted(missed), ...won("A")],
    mended: [mend.takenOut(nth(2))],
    right: [charted(missed), ...won("A")],
  },
  {
    name: "the wrong winner of the last point",
    charted: won("AAAB"),
    mended: [mend.winnerMended({ id: nth(4), point: { ...drawn(), level: "score", shots: [] } }, "A")],
    right: won("AAAA"),
  },
  {
    name: "the wrong ending, five points back",
    charted: [charted(drawn()), ...won("BABAB")],
    mended: [mend.pointMended({ id: nth(1) }, missed)],
    right: [charted(missed), ...won("BABAB")],
  },
  {
    name: "a ball drawn wrongly, three points back",
    charted: [charted(missed), ...won("BA")],
    mended: [
      mend.pointMended(
        { id: nth(1) },
        {
          ...missed,
          shots: [
            ...missed.shots.slice(0, 1),
            line({ to: { right: -300, away: 1000 }, result: "missed", miss: "wide" }),
          ],
        },
      ),
    ],
    right: [
      charted({
        ...missed,
        shots: [
          ...missed.shots.slice(0, 1),
          line({ to: { right: -300, away: 1000 }, result: "missed", miss: "wide" }),
        ],
      }),
      ...won("BA"),
    ],
  },
  {
    name: "the wrong striker",
    charted: [charted(drawn({ shots: [line({ striker: "B" }), line({ result: "winner" })] }))],
    mended: [mend.pointMended({ id: nth(1) }, drawn())],
    right: [charted(drawn())],
  },
  {
    name: "the net cord decided it",
    charted: [charted(missed), ...won("A")],
    mended: [mend.lastBallLeftOut({ id: nth(1), point: missed }, "netCord")],
    right: [
      charted({
        ...missed,
        shots: [...missed.shots.slice(0, 1), line({ result: "missed", miss: "long", leftOut: "netCord" })],
      }),
      ...won("A"),
    ],
  },
  {
    name: "called out, and seen in",
    charted: [charted(missed)],
    mended: [mend.lastBallLeftOut({ id: nth(1), point: missed }, "calledOut")],
    right: [
      charted({
        ...missed,
        shots: [...missed.shots.slice(0, 1), line({ result: "missed", miss: "long", leftOut: "calledOut" })],
      }),
    ],
  },
  {
    name: "a point penalty at deuce, forgotten and put in",
    charted: [...deuce, ...won("BA")],
    mended: [put(nth(7), { kind: "PenaltyGiven", penalty: "point", against: "A" })],
    right: [...deuce, { kind: "PenaltyGiven", penalty: "point", against: "A" }, ...won("BA")],
  },
  {
    name: "a point penalty at a change of ends begins the next game",
    charted: [...game("A"), ...won("B")],
    mended: [put(nth(5), { kind: "PenaltyGiven", penalty: "point", against: "B" })],
    right: [...game("A"), { kind: "PenaltyGiven", penalty: "point", against: "B" }, ...won("B")],
  },
  {
    name: "a game penalty in a tie-break",
    charted: [...games("ABABABABABAB"), ...won("AB")],
    mended: [{ kind: "PenaltyGiven", penalty: "game", against: "B" }],
    right: [...games("ABABABABABAB"), ...won("AB"), { kind: "PenaltyGiven", penalty: "game", against: "B" }],
  },
  {
    name: "a penalty against the wrong player",
    charted: [...won("A"), { kind: "PenaltyGiven", penalty: "point", against: "A" }, ...won("B")],
    mended: [
      { kind: "EntryAmended", target: nth(2), to: { kind: "PenaltyGiven", penalty: "point", against: "B" } },
    ],
    right: [...won("A"), { kind: "PenaltyGiven", penalty: "point", against: "B" }, ...won("B")],
  },
  {
    name: "a warning changes nothing",
    charted: won("AB"),
    mended: [{ kind: "PenaltyGiven", penalty: "warning", against: "A" }],
    right: won("AB"),
  },
  {
    name: "the score disputed and put back two points",
    charted: won("AAB"),
    mended: [stated({ points: [1, 0] }), ...won("A")],
    right: [...won("A"), ...won("A")],
  },
  {
    name: "retired by mistake",
    charted: [...won("AB"), { kind: "MatchEnded", how: { type: "retired", side: "A" } }],
    mended: [mend.takenOut(nth(3)), ...won("A")],
    right: won("ABA"),
  },
  {
    name: "suspended overnight and gone on",
    charted: [...won("AB"), { kind: "PlaySuspended", reason: "light" }],
    mended: [{ kind: "PlayResumed" }, charted(drawn())],
    right: [...won("AB"), charted(drawn())],
  },
  {
    name: "a double fault charted as an ace",
    charted: [charted(drawn({ serve: { outcome: "ace", faults: 0 }, shots: [] })), ...won("B")],
    mended: [
      mend.pointMended(
        { id: nth(1) },
        drawn({ winner: "B", serve: { outcome: "doubleFault", faults: 2 }, shots: [] }),
      ),
    ],
    right: [
      charted(drawn({ winner: "B", serve: { outcome: "doubleFault", faults: 2 }, shots: [] })),
      ...won("B"),
    ],
  },
  {
    name: "what was not seen after all",
    charted: [charted(missed), ...won("A")],
    mended: [mend.madeNotSeen({ id: nth(1), point: missed })],
    right: won("BA"),
  },
  {
    name: "a point taken out that did count",
    charted: [charted(missed), ...won("A"), mend.takenOut(nth(1))],
    mended: [mend.putBack(nth(1))],
    right: [charted(missed), ...won("A")],
  },
];
