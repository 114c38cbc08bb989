import { SIDES } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import type { TileEnds, TileNextChange, TilePause } from "@courtloom/protocol";
import { applyScore, type ScoreBoard, secondsAllowed } from "@courtloom/tennis";

/** Longer than any stretch of a tie-break without a change of ends in it. */
const MOST_POINTS = 12;

/** The score after one game more, for each side that may win it; without those that end the match. */
const afterGame = (board: ScoreBoard): readonly ScoreBoard[] =>
  SIDES.flatMap((against) => {
    const next = applyScore(board, { type: "gamePenalty", against });
    return next.ok && !next.value.state.over ? [next.value] : [];
  });

const isDue = ({ state }: ScoreBoard): boolean => state.endsDue;

/** Points until ends change within a tie-break, if it lasts so long; undefined where they do not. */
const pointsToChange = (board: ScoreBoard): number | undefined => {
  let at = board;
  for (let points = 1; points <= MOST_POINTS; points += 1) {
    const [a, b] = at.state.points;
    const next = applyScore(at, { type: "point", winner: a <= b ? "A" : "B" });
    if (!next.ok || !next.value.state.tieBreak) return undefined;
    if (isDue(next.value)) return points;
    at = next.value;
  }
  return undefined;
};

const inTieBreak = (board: ScoreBoard): TileNextChange | undefined => {
  const points = pointsToChange(board);
  if (points !== undefined) return { kind: "points", points };
  const outcomes = afterGame(board);
  return outcomes.length > 0 && outcomes.every(isDue) ? { kind: "tieBreak" } : undefined;
};

/** After one game more ends do not change: do they after the one that follows, whoever wins? */
const isAfterNext = (board: ScoreBoard): boolean =>
  !board.state.tieBreak && afterGame(board).every(isDue) && afterGame(board).length > 0;

/** What is to be played before the next change of ends, found by trying it. SPEC LV50. */
export const nextChangeOf = (board: ScoreBoard): TileNextChange | undefined => {
  if (board.state.over) return undefined;
  if (board.state.tieBreak) return inTieBreak(board);
  const outcomes = afterGame(board);
  if (outcomes.length === 0) return undefined;
  if (board.setup.format.ends === "setEnds") return { kind: "set" };
  if (outcomes.every(isDue)) return { kind: "game" };
  return { kind: outcomes.every(isAfterNext) ? "gameAndOne" : "later" };
};

const pauseOf = ({ state }: ScoreBoard, sinceMs: number | undefined): TilePause | undefined => {
  const { pause, endsDue } = state;
  const allowedSeconds = secondsAllowed(pause);
  if (allowedSeconds === null || (pause !== "rest" && pause !== "noRest" && pause !== "set"))
    return undefined;
  return { kind: pause, change: endsDue, allowedSeconds, ...(sinceMs === undefined ? {} : { sinceMs }) };
};

/** How close a match is to a change of ends; undefined once it is over. SPEC LV50, LV51. */
export const tileEndsOf = (view: MatchView, pauseSinceMs?: number): TileEnds | undefined => {
  const { board } = view.trail;
  if (board.state.over || view.sealed) return undefined;
  const pause = pauseOf(board, pauseSinceMs);
  const next = nextChangeOf(board);
  return { ...(pause ? { pause } : {}), ...(next ? { next } : {}) };
};
