import { attemptsOf, type WatchView } from "@courtloom/decisions";
import type { MatchView } from "@courtloom/match-log";
import { scoreLine } from "@courtloom/tennis";
import { withDashes } from "./score-dashes.ts";

/** One ball or moment that a watch counted, as a person reads it. */
export interface RunAttempt {
  readonly key: string;
  /** Place of its point in the log. */
  readonly pos: number;
  /** The score that its point began at, from the player's side. */
  readonly score: string;
  readonly isHit: boolean;
  /** Absent where the plan does not say. */
  readonly offPlan?: boolean;
  /** Among those that the evidence stands on. */
  readonly isInRun: boolean;
}

/** Everything a watch counted, in the order of play; the run is the last of them. Empty: nothing was counted. SPEC rule AS24. */
export const attemptRun = (
  view: MatchView,
  { side, rate, since }: Pick<WatchView, "side" | "rate" | "since">,
): readonly RunAttempt[] => {
  const attempts = attemptsOf(view, side, rate);
  const runFrom = attempts.length - (since?.n ?? 0);
  return attempts.flatMap(({ at, event, offPlan }, i): RunAttempt[] => {
    const viewed = view.points[at];
    if (viewed === undefined) return [];
    return [
      {
        key: `${viewed.id} ${i}`,
        pos: viewed.pos,
        score: withDashes(scoreLine(viewed.before, side)),
        isHit: event,
        isInRun: i >= runFrom,
        ...(offPlan === undefined ? {} : { offPlan }),
      },
    ];
  });
};
