import type { Side } from "@courtloom/core";
import fc from "fast-check";
import { type FinalSet, type MatchFormat, TIEBREAK_ENDS, TIEBREAK_SERVES } from "../src/format.ts";
import { parseFormat } from "../src/parse-format.ts";
import type { ScoreSetup } from "../src/score-board.ts";
import type { ScoreEvent } from "../src/score-event.ts";

export const side: fc.Arbitrary<Side> = fc.constantFrom("A", "B");
const winBy: fc.Arbitrary<1 | 2> = fc.constantFrom(1, 2);
const length = fc.constantFrom(5, 7, 10);

const finalSet: fc.Arbitrary<FinalSet> = fc.oneof(
  fc.constant<FinalSet>({ kind: "same" }),
  fc.constant<FinalSet>({ kind: "advantage" }),
  fc.record({
    kind: fc.constant("tiebreak" as const),
    tiebreakAt: fc.constantFrom(3, 4, 6, 12),
    tiebreakTo: length,
    winBy,
  }),
  fc.record({ kind: fc.constant("matchTiebreak" as const), to: length, winBy }),
);

/** Any format that can be played; settings with a default are sometimes left out. */
export const anyFormat: fc.Arbitrary<MatchFormat> = fc
  .record(
    {
      sets: fc.constantFrom(1, 3, 5),
      gamesPerSet: fc.constantFrom(3, 4, 6, 8),
      tiebreakAt: fc.constantFrom(null, 3, 4, 5, 6, 8),
      tiebreakTo: length,
      noAd: fc.constantFrom<boolean | number>(true, false, 1, 2, 3),
      finalSet,
      tiebreakWinBy: winBy,
      tbEnds: fc.constantFrom(...TIEBREAK_ENDS),
      tbServe: fc.constantFrom(...TIEBREAK_SERVES),
      matchTiebreakEnds: fc.constantFrom(...TIEBREAK_ENDS),
      matchTiebreakServe: fc.constantFrom(...TIEBREAK_SERVES),
      tieBreakOnly: fc.record({ to: length, winBy }),
      gameLead: winBy,
      fixedGames: fc.constantFrom(3, 5, 6, 7),
      ends: fc.constantFrom("oddGames" as const, "setEnds" as const),
    },
    { requiredKeys: ["sets", "gamesPerSet", "tiebreakAt", "tiebreakTo", "noAd", "finalSet"] },
  )
  .filter((format) => parseFormat(format).ok);

export const anySetup: fc.Arbitrary<ScoreSetup> = fc.record(
  {
    format: anyFormat,
    firstServer: side,
    doublesOrder: fc.constant(["P1", "Q1", "P2", "Q2"]),
  },
  { requiredKeys: ["format", "firstServer"] },
);

/** Points by a chance that leans to one side, so that short and long matches both come up. */
export const somePoints = (count: number): fc.Arbitrary<ScoreEvent[]> =>
  fc.integer({ min: 1, max: 9 }).chain((lean) =>
    fc.array(
      fc
        .integer({ min: 0, max: 9 })
        .map((die): ScoreEvent => ({ type: "point", winner: die < lean ? "A" : "B" })),
      { minLength: count, maxLength: count },
    ),
  );

const pair = fc.tuple(fc.nat({ max: 7 }), fc.nat({ max: 7 }));

/** Every kind of event except undo; mostly points. */
export const anyEvent: fc.Arbitrary<ScoreEvent> = fc.oneof(
  { weight: 30, arbitrary: side.map((winner): ScoreEvent => ({ type: "point", winner })) },
  { weight: 3, arbitrary: side.map((against): ScoreEvent => ({ type: "pointPenalty", against })) },
  { weight: 3, arbitrary: side.map((against): ScoreEvent => ({ type: "gamePenalty", against })) },
  { weight: 2, arbitrary: side.map((to): ScoreEvent => ({ type: "setServer", to })) },
  { weight: 2, arbitrary: fc.record({ type: fc.constant("setScore" as const), games: pair, points: pair }) },
  { weight: 1, arbitrary: side.map((loser): ScoreEvent => ({ type: "retire", side: loser })) },
  { weight: 1, arbitrary: side.map((absent): ScoreEvent => ({ type: "walkover", absent })) },
  {
    weight: 1,
    arbitrary: fc
      .record({
        unfinishedGame: fc.constantFrom("ignored", "leaderGetsIt", "needsLeadOfTwo", "decidingPoint"),
        drawAllowed: fc.boolean(),
      })
      .map((policy) => ({ type: "timeUp", policy }) as ScoreEvent),
  },
);
