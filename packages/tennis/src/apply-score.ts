import { err, ok, otherSide, type Result, unreachable } from "@courtloom/core";
import { indexOf, LOVE, type SideIndex, sideAt } from "./pair.ts";
import { makeBoard, type ScoreBoard, splitOrder } from "./score-board.ts";
import type { ScoreError } from "./score-error.ts";
import type { ScoreEvent } from "./score-event.ts";
import { afterCorrection, endMatch, isAtSetStart, isOver, type Standing, serverNow } from "./standing.ts";
import { stateScore, withServer } from "./state-score.ts";
import { ringBell, winAfterBell } from "./time-up.ts";
import { type Rulebook, winGame, winPoint } from "./win-point.ts";

/** The score after one more event; the given board stays as it is. SPEC SC1 to SC36. */
export function applyScore(board: ScoreBoard, event: ScoreEvent): Result<ScoreBoard, ScoreError> {
  if (event.type === "undo") return undo(board, event.n);
  if (isOver(board.standing)) return err({ code: "match_over", status: board.standing.status });
  const next = step(board.setup, board.standing, event);
  if (!next.ok) return next;
  return ok(makeBoard(board.setup, next.value, board, board.eventCount + 1));
}

function undo(board: ScoreBoard, count: number): Result<ScoreBoard, ScoreError> {
  const refusal: ScoreError = { code: "nothing_to_undo", asked: count, available: board.eventCount };
  if (!Number.isInteger(count) || count < 1) return err(refusal);
  let at: ScoreBoard | null = board;
  for (let left = count; left > 0 && at !== null; left--) at = at.previous;
  return at === null ? err(refusal) : ok(at);
}

type Step = Exclude<ScoreEvent, { type: "undo" }>;

function step(book: Rulebook, standing: Standing, event: Step): Result<Standing, ScoreError> {
  switch (event.type) {
    case "point":
      return ok(awardPoint(book, standing, indexOf(event.winner)));
    case "pointPenalty":
      return ok(withBegun(awardPoint(book, standing, indexOf(otherSide(event.against))), standing.begun));
    case "gamePenalty":
      return ok(withBegun(awardGame(book, standing, indexOf(otherSide(event.against))), standing.begun));
    case "setScore":
      return stateScore(book, standing, event);
    case "setServer":
      return ok(afterCorrection(withServer(book, standing, event.to)));
    case "setOrder":
      return nameOrder(book, standing, event.order);
    case "retire":
      return ok(endMatch(standing, "retired", indexOf(otherSide(event.side))));
    case "default":
      return ok(endMatch(standing, "defaulted", indexOf(otherSide(event.side))));
    case "walkover":
      if (standing.begun) return err({ code: "already_begun" });
      return ok(endMatch(standing, "walkover", indexOf(otherSide(event.absent))));
    case "unplayed":
      return ok(endMatch(standing, "unplayed", null));
    case "timeUp":
      return ok(ringBell(book, standing, event.policy));
    default:
      return unreachable(event);
  }
}

const awardPoint = (book: Rulebook, standing: Standing, winner: SideIndex): Standing =>
  standing.bell === null
    ? winPoint(book, standing, winner)
    : winAfterBell(book, standing, standing.bell, winner);

const awardGame = (book: Rulebook, standing: Standing, winner: SideIndex): Standing =>
  standing.bell === null
    ? winGame(book, standing, winner)
    : winAfterBell(book, standing, standing.bell, winner);

/** A penalty counts as played, yet a match of which only penalties are known has not begun. SPEC SC20, SC29. */
const withBegun = (standing: Standing, begun: boolean): Standing => ({ ...standing, begun });

function nameOrder(
  book: Rulebook,
  standing: Standing,
  order: readonly string[],
): Result<Standing, ScoreError> {
  const { pairs } = standing;
  if (pairs === null) return err({ code: "not_doubles" });
  if (!isAtSetStart(standing)) return err({ code: "not_set_start" });
  const server = serverNow(standing, book.firstServer);
  const players = splitOrder(order, sideAt(server));
  const isSamePairs = players.every((names, side) => isSamePair(names, pairs.players[side === 0 ? 0 : 1]));
  if (order.length !== 4 || !isSamePairs) {
    const due = pairs.players[server].join(" or ");
    return err({ code: "bad_order", reason: `must name ${due} first, then the pairs in turn` });
  }
  return ok({ ...standing, pairs: { players, fromGame: standing.gamesPlayed, served: LOVE } });
}

const isSamePair = (names: readonly string[], pair: readonly string[]): boolean =>
  names.length === 2 && pair.every((name) => names.includes(name));
