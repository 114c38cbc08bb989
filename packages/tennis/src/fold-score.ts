import { err, ok, type Result } from "@courtloom/core";
import { applyScore } from "./apply-score.ts";
import { type FormatError, formatErrorText } from "./format-error.ts";
import { type ScoreBoard, type ScoreSetup, startScore } from "./score-board.ts";
import { type ScoreError, scoreErrorText } from "./score-error.ts";
import type { ScoreEvent } from "./score-event.ts";

/** `index` counts events from 0. */
export type FoldError =
  | { readonly code: "bad_format"; readonly error: FormatError }
  | { readonly code: "event_refused"; readonly index: number; readonly error: ScoreError };

/** The score after all of `events`; stops at the first that cannot follow. */
export function foldScore(setup: ScoreSetup, events: Iterable<ScoreEvent>): Result<ScoreBoard, FoldError> {
  const start = startScore(setup);
  if (!start.ok) return err({ code: "bad_format", error: start.error });
  let board = start.value;
  let index = 0;
  for (const event of events) {
    const next = applyScore(board, event);
    if (!next.ok) return err({ code: "event_refused", index, error: next.error });
    board = next.value;
    index++;
  }
  return ok(board);
}

export const foldErrorText = (error: FoldError): string =>
  error.code === "bad_format"
    ? formatErrorText(error.error)
    : `event ${error.index + 1}: ${scoreErrorText(error.error)}`;
