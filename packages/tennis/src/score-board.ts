import { err, ok, type Result, type Side } from "@courtloom/core";
import { deriveState } from "./derive-state.ts";
import type { MatchFormat } from "./format.ts";
import type { FormatError } from "./format-error.ts";
import { indexOf, LOVE } from "./pair.ts";
import { parseFormat } from "./parse-format.ts";
import type { ScoreState } from "./score-state.ts";
import { rulesOfSet } from "./set-rules.ts";
import { type Pairs, STARTING_SCORE, type Standing } from "./standing.ts";

export interface ScoreSetup {
  readonly format: MatchFormat;
  readonly firstServer: Side;
  /** Doubles: four names in the order of service, the first server first; pairs are 1st with 3rd and 2nd with 4th. */
  readonly doublesOrder?: readonly string[];
}

/**
 * A match's score at one moment, with everything before it. Immutable: `applyScore` makes the next one.
 * `previous` is the score before the last event that was not an undo, so any depth can be taken back.
 */
export interface ScoreBoard {
  readonly setup: ScoreSetup;
  readonly state: ScoreState;
  /** Inside knowledge of the scoring functions; read `state` instead. */
  readonly standing: Standing;
  readonly previous: ScoreBoard | null;
  /** Events that can be taken back. */
  readonly eventCount: number;
}

/** The score before the first point. SPEC SC1; formats F1, F2. */
export function startScore(setup: ScoreSetup): Result<ScoreBoard, FormatError> {
  const format = parseFormat(setup.format);
  if (!format.ok) return format;
  const pairs =
    setup.doublesOrder === undefined ? ok(null) : makePairs(setup.doublesOrder, setup.firstServer);
  if (!pairs.ok) return pairs;
  const rules = rulesOfSet(setup.format, LOVE);
  const standing: Standing = { ...STARTING_SCORE, rules, pairs: pairs.value };
  return ok(makeBoard(setup, standing, null, 0));
}

export const makeBoard = (
  setup: ScoreSetup,
  standing: Standing,
  previous: ScoreBoard | null,
  eventCount: number,
): ScoreBoard => ({
  setup,
  state: deriveState(setup.format, setup.firstServer, standing),
  standing,
  previous,
  eventCount,
});

/** Splits an order of service into the pairs' own orders; the side `first` serves first. */
function makePairs(order: readonly string[], first: Side): Result<Pairs, FormatError> {
  if (order.length !== 4 || new Set(order).size !== 4)
    return err({ code: "bad_doubles_order", reason: "must be four different names" });
  return ok({ players: splitOrder(order, first), fromGame: 0, served: LOVE });
}

export function splitOrder(order: readonly string[], first: Side): Pairs["players"] {
  const own = order.filter((_, index) => index % 2 === 0);
  const other = order.filter((_, index) => index % 2 === 1);
  return indexOf(first) === 0 ? [own, other] : [other, own];
}
