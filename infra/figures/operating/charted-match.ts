import type { FigureAttempt } from "@courtloom/decisions";
import { foldLog, type MatchView } from "@courtloom/match-log";
import { makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";

/** Attempts that a charted match has room for, one in every second point. */
export const ROOM = 40;
const POINTS_PER_ATTEMPT = 2;
/** Every server holds to fifteen, so that ends are changed as in a close match. */
const TWO_GAMES = "AABAABBABB";

const viewOf = (letters: string): MatchView => {
  const points = [...letters].map((winner) => pointTo(winner === "A" ? "A" : "B", { level: "every" }));
  const view = foldLog(makeLog(points, openedWith()));
  if (!view.ok) throw new Error(view.error);
  if (view.value.points.length !== letters.length)
    throw new Error("The match was over before its last point.");
  return view.value;
};

/** A match in progress, every ball of side A charted: 80 points, with changes of ends. */
export const closeMatch = (): MatchView => viewOf(TWO_GAMES.repeat(ROOM).slice(0, POINTS_PER_ATTEMPT * ROOM));

/** One game of 80 points, in which ends are never changed, so that an alert that eases stays open. */
export const oneGame = (): MatchView =>
  viewOf(`ABABAB${"AB".repeat(ROOM)}`.slice(0, POINTS_PER_ATTEMPT * ROOM));

/** Events and other attempts in the order of play, at most `ROOM`, as the fold of a match gives them. */
export const attemptsFrom = (events: readonly boolean[]): readonly FigureAttempt[] =>
  events.map((event, i) => ({ at: POINTS_PER_ATTEMPT * i, event }));
