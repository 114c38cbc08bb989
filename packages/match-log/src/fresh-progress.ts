import { err, ok, type Result } from "@courtloom/core";
import { startScore } from "@courtloom/tennis";
import type { MatchOpened } from "./opened.ts";
import type { Progress } from "./replay.ts";

/** A match before its first fact. Error: its format cannot be played. */
export const freshProgress = (opened: MatchOpened): Result<Progress, "bad_format"> => {
  const board = startScore({
    format: opened.format,
    firstServer: opened.firstServer,
    ...(opened.doublesOrder ? { doublesOrder: opened.doublesOrder } : {}),
  });
  if (!board.ok) return err("bad_format");
  return ok({
    board: board.value,
    points: [],
    setAside: [],
    level: "score",
    subjects: opened.subjects,
    endOfA: undefined,
    suspended: false,
  });
};
