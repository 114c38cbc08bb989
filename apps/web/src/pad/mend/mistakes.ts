import type { Side } from "@courtloom/core";
import type { EntryBody, Fact, LeftOut, MatchView, Point, Shot } from "@courtloom/match-log";
import { idAt, pointTo } from "@courtloom/match-log/testing";
import type { EndSeen } from "@courtloom/tennis";
import type { PointFrame } from "../point-draft.ts";
import { putBack, replayedInstead, takenOut } from "./mend-fact.ts";
import { endsInGame, endsSince, serverBetween, serverSince } from "./mend-order.ts";
import * as mend from "./mend-point.ts";
import { missedGame } from "./mend-score.ts";

/** A mistake or an argument on court: the match as it was charted and then mended, and as it would have been charted right. */
export interface Mistake {
  readonly name: string;
  readonly charted: readonly EntryBody[];
  /** From the view of what was charted, as the screen makes it. */
  readonly mended: (view: MatchView) => readonly EntryBody[];
  /** Points that nobody charted, or that were put back, cannot equal those of the match charted right. */
  readonly pointsDiffer?: true;
  readonly right: readonly EntryBody[];
}

const won = (letters: string): readonly EntryBody[] =>
  [...letters].map((letter) => pointTo(letter === "A" ? "A" : "B"));
const wonAt = (letters: string, endOfA: EndSeen): readonly EntryBody[] =>
  [...letters].map((letter) => pointTo(letter === "A" ? "A" : "B", { endOfA }));
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
const alone = (winner: Side): Point => ({
  winner,
  level: "score",
  seat: "behind",
  endOfA: "near",
  shots: [],
});
const charted = (point: Point): EntryBody => ({ kind: "PointCharted", point });
const missed = drawn({
  winner: "B",
  shots: [...drawn().shots.slice(0, 1), line({ result: "missed", miss: "long" })],
});
/** B, who is left-handed, down the line from the left corner. */
const mirrored = drawn({
  winner: "B",
  shots: [
    { striker: "B", from: { right: 300, away: 1290 }, to: { right: 300, away: -1000 }, result: "winner" },
  ],
});
const server = (to: Side, slip: "players" | "chartist"): Fact => ({ kind: "ServerStated", to, slip });
const put = (before: string, fact: Fact): EntryBody => ({ kind: "EntryInserted", before, fact });
const stated = (score: Extract<Fact, { kind: "ScoreStated" }>["score"], isMissed = false): Fact => ({
  kind: "ScoreStated",
  score,
  missed: isMissed,
});

const FRAME: PointFrame = { server: "A", seat: "behind", endOfA: "near" };

/** The first point's last ball, left out as the screen does it. */
const leftOut = (point: Point, reason: LeftOut): readonly EntryBody[] => {
  const body = mend.lastBallLeftOut({ id: nth(1), point }, reason, FRAME);
  return body ? [body] : [];
};

export const MISTAKES: readonly Mistake[] = [
  {
    name: "my slip: the wrong first server, seen at once",
    charted: won("A"),
    mended: () => [serverSince(nth(1), "B", "chartist")],
    right: [server("B", "chartist"), ...won("A")],
  },
  {
    name: "my slip: the wrong server, found two games later",
    charted: [...games("AB"), ...won("AB")],
    mended: () => [serverSince(nth(1), "B", "chartist")],
    right: [server("B", "chartist"), ...games("AB"), ...won("AB")],
  },
  {
    name: "the players' slip: the wrong server in a game, points stand",
    charted: [...game("A"), ...won("AB")],
    mended: () => [server("A", "players")],
    right: [...game("A"), ...won("AB"), server("A", "players")],
  },
  {
    name: "the players' slip, found two games later: the order stays as altered from its game on",
    charted: [...games("ABA"), ...won("B")],
    mended: () => [put(nth(5), server("A", "players"))],
    right: [...game("A"), server("A", "players"), ...games("BA"), ...won("B")],
  },
  {
    name: "the wrong server in a tie-break, put right after an even number of points",
    charted: [...games("ABABABABABAB"), ...won("AB")],
    mended: () => [put(nth(49), server("B", "players"))],
    right: [...games("ABABABABABAB"), server("B", "players"), ...won("AB")],
  },
  {
    name: "the wrong server in a tie-break, found after an odd number of points",
    charted: [...games("ABABABABABAB"), ...won("ABA")],
    mended: () => [server("A", "players")],
    right: [...games("ABABABABABAB"), ...won("ABA"), server("A", "players")],
  },
  {
    name: "ends seen wrongly for a game",
    charted: [...game("A"), charted(drawn({ endOfA: "near" })), charted({ ...missed, endOfA: "near" })],
    mended: () => [endsSince(nth(5), "near")],
    right: [...game("A"), charted(drawn({ endOfA: "far" })), charted({ ...missed, endOfA: "far" })],
  },
  {
    name: "ends seen wrongly since the start",
    charted: [charted(drawn()), charted(missed)],
    mended: () => [endsSince(nth(1), "near")],
    right: [charted(drawn({ endOfA: "far" })), charted({ ...missed, endOfA: "far" })],
  },
  {
    name: "a point missed",
    charted: won("ABA"),
    mended: () => [mend.pointPutIn({ id: nth(2), point: drawn() }, "B")],
    right: won("ABBA"),
  },
  {
    name: "a whole game missed",
    charted: [...game("A"), ...won("AB")],
    mended: () => [put(nth(5), stated({ games: [1, 1], points: [0, 0] }, true))],
    pointsDiffer: true,
    right: [...games("AB"), ...won("AB")],
  },
  {
    name: "three games missed",
    charted: [...game("A"), charted(drawn())],
    mended: () => [put(nth(5), stated({ games: [2, 2], points: [0, 0] }, true))],
    pointsDiffer: true,
    right: [...games("ABBA"), charted(drawn())],
  },
  {
    name: "a set missed",
    charted: [...won("AB")],
    mended: () => [put(nth(1), stated({ sets: [[6, 0]], games: [0, 0], points: [0, 0] }, true))],
    pointsDiffer: true,
    right: [...games("AAAAAA"), ...won("AB")],
  },
  {
    name: "a let counted as a point",
    charted: won("ABA"),
    mended: (view) => replayedInstead(nth(2), view),
    right: won("AA"),
  },
  {
    name: "a point counted twice",
    charted: [charted(missed), charted(missed), ...won("A")],
    mended: (view) => takenOut(nth(2), view),
    right: [charted(missed), ...won("A")],
  },
  {
    name: "the wrong winner of the last point",
    charted: won("AAAB"),
    mended: () => [mend.winnerMended({ id: nth(4), point: alone("B") }, "A")],
    right: won("AAAA"),
  },
  {
    name: "the wrong ending, five points back",
    charted: [charted(drawn()), ...won("BABAB")],
    mended: () => [mend.pointMended({ id: nth(1) }, missed)],
    right: [charted(missed), ...won("BABAB")],
  },
  {
    name: "a ball drawn wrongly, three points back",
    charted: [charted(missed), ...won("BA")],
    mended: () => [
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
    mended: () => [mend.pointMended({ id: nth(1) }, drawn())],
    right: [charted(drawn())],
  },
  {
    name: "the net cord decided it",
    charted: [charted(missed), ...won("A")],
    mended: () => leftOut(missed, "netCord"),
    right: [
      charted({
        ...missed,
        shots: [...missed.shots.slice(0, 1), line({ result: "missed", miss: "long", leftOut: "netCord" })],
      }),
      ...won("A"),
    ],
  },
  {
    name: "called out and seen in: the score follows the call",
    charted: [charted(drawn()), ...won("A")],
    mended: () => leftOut(drawn(), "calledOut"),
    right: [
      charted(
        drawn({
          winner: "B",
          shots: [...drawn().shots.slice(0, 1), line({ result: "missed", leftOut: "calledOut" })],
        }),
      ),
      ...won("A"),
    ],
  },
  {
    name: "a point penalty at deuce, forgotten and put in",
    charted: [...deuce, ...won("BA")],
    mended: () => [put(nth(7), { kind: "PenaltyGiven", penalty: "point", against: "A" })],
    right: [...deuce, { kind: "PenaltyGiven", penalty: "point", against: "A" }, ...won("BA")],
  },
  {
    name: "a point penalty at a change of ends begins the next game",
    charted: [...game("A"), ...won("B")],
    mended: () => [put(nth(5), { kind: "PenaltyGiven", penalty: "point", against: "B" })],
    right: [...game("A"), { kind: "PenaltyGiven", penalty: "point", against: "B" }, ...won("B")],
  },
  {
    name: "a game penalty in a tie-break",
    charted: [...games("ABABABABABAB"), ...won("AB")],
    mended: () => [{ kind: "PenaltyGiven", penalty: "game", against: "B" }],
    right: [...games("ABABABABABAB"), ...won("AB"), { kind: "PenaltyGiven", penalty: "game", against: "B" }],
  },
  {
    name: "a penalty against the wrong player",
    charted: [...won("A"), { kind: "PenaltyGiven", penalty: "point", against: "A" }, ...won("B")],
    mended: () => [
      { kind: "EntryAmended", target: nth(2), to: { kind: "PenaltyGiven", penalty: "point", against: "B" } },
    ],
    right: [...won("A"), { kind: "PenaltyGiven", penalty: "point", against: "B" }, ...won("B")],
  },
  {
    name: "a warning changes nothing",
    charted: won("AB"),
    mended: () => [{ kind: "PenaltyGiven", penalty: "warning", against: "A" }],
    right: won("AB"),
  },
  {
    name: "the score disputed and put back two points",
    charted: won("AAB"),
    mended: () => [stated({ points: [1, 0] }), ...won("A")],
    pointsDiffer: true,
    right: [...won("A"), ...won("A")],
  },
  {
    name: "retired by mistake",
    charted: [...won("AB"), { kind: "MatchEnded", how: { type: "retired", side: "A" } }],
    mended: (view) => [...takenOut(nth(3), view), ...won("A")],
    right: won("ABA"),
  },
  {
    name: "suspended overnight and gone on",
    charted: [...won("AB"), { kind: "PlaySuspended", reason: "light" }],
    mended: () => [{ kind: "PlayResumed" }, charted(drawn())],
    right: [...won("AB"), charted(drawn())],
  },
  {
    name: "a double fault charted as an ace",
    charted: [charted(drawn({ serve: { outcome: "ace", faults: 0 }, shots: [] })), ...won("B")],
    mended: () => [
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
    mended: () => [mend.madeNotSeen({ id: nth(1), point: missed })],
    right: won("BA"),
  },
  {
    name: "a point taken out that did count",
    charted: [charted(missed), ...won("A"), { kind: "EntryVoided", target: nth(1) }],
    mended: () => [putBack(nth(1))],
    right: [charted(missed), ...won("A")],
  },
  {
    name: "the players' slip in a game, put right at once: the points stand",
    charted: [...game("A"), charted(drawn({ endOfA: "far" })), ...won("B")],
    mended: (view) => serverBetween(nth(5), "A", view.score.server ?? "B"),
    right: [
      ...game("A"),
      server("A", "players"),
      charted(drawn({ endOfA: "far" })),
      ...won("B"),
      server("B", "players"),
    ],
  },
  {
    name: "ends seen wrongly in one game, right again since",
    charted: [
      ...game("A"),
      charted(missed),
      ...wonAt("BBB", "near"),
      charted(drawn({ endOfA: "far" })),
      ...wonAt("AB", "far"),
    ],
    mended: (view) => endsInGame(nth(6), view, "far"),
    right: [
      ...game("A"),
      charted({ ...missed, endOfA: "far" }),
      ...wonAt("BBB", "far"),
      charted(drawn({ endOfA: "far" })),
      ...wonAt("AB", "far"),
    ],
  },
  {
    name: "the point since which ends were put right is taken out",
    charted: [charted(drawn()), charted(missed), endsSince(nth(1), "near")],
    mended: (view) => takenOut(nth(1), view),
    right: [charted({ ...missed, endOfA: "far" })],
  },
  {
    name: "a seat confused: the side taken for behind an end, redrawn as seen",
    charted: [charted({ ...missed, seat: "side", endOfA: "left" }), ...won("A")],
    mended: () => [mend.pointMended({ id: nth(1) }, missed)],
    right: [charted(missed), ...won("A")],
  },
  {
    name: "the game in play missed to its end",
    charted: won("AB"),
    mended: (view) => [missedGame(view, "B", 1), ...won("A")],
    pointsDiffer: true,
    right: [...won("ABBBB"), ...won("A")],
  },
  {
    name: "a default after a code of penalties",
    charted: [
      { kind: "PenaltyGiven", penalty: "warning", against: "B" },
      ...won("A"),
      { kind: "PenaltyGiven", penalty: "point", against: "B" },
    ],
    mended: () => [
      { kind: "PenaltyGiven", penalty: "game", against: "B" },
      { kind: "MatchEnded", how: { type: "defaulted", side: "B" } },
    ],
    right: [
      { kind: "PenaltyGiven", penalty: "warning", against: "B" },
      ...won("A"),
      { kind: "PenaltyGiven", penalty: "point", against: "B" },
      { kind: "PenaltyGiven", penalty: "game", against: "B" },
      { kind: "MatchEnded", how: { type: "defaulted", side: "B" } },
    ],
  },
  {
    name: "the level changed in mid-match, a point of before mended to its own level",
    charted: [charted(missed), { kind: "LevelChanged", level: "key" }, charted(drawn({ level: "key" }))],
    mended: () => [mend.pointMended({ id: nth(1) }, drawn())],
    right: [charted(drawn()), { kind: "LevelChanged", level: "key" }, charted(drawn({ level: "key" }))],
  },
  {
    name: "the charted player changed in mid-match, said too late",
    charted: [
      { kind: "SubjectsChanged", subjects: ["B"] },
      charted(drawn({ level: "key" })),
      charted({ ...missed, level: "key" }),
    ],
    mended: () => [put(nth(3), { kind: "SubjectsChanged", subjects: ["A"] })],
    right: [
      { kind: "SubjectsChanged", subjects: ["B"] },
      charted(drawn({ level: "key" })),
      { kind: "SubjectsChanged", subjects: ["A"] },
      charted({ ...missed, level: "key" }),
    ],
  },
  {
    name: "a left-hander's ball, mended like any other",
    charted: [charted({ ...mirrored, winner: "B", shots: mirrored.shots.slice(0, 1) })],
    mended: () => [mend.pointMended({ id: nth(1) }, mirrored)],
    right: [charted(mirrored)],
  },
];
