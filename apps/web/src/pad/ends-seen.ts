import type { LoggedEntry, MatchView } from "@courtloom/match-log";
import { standingFacts } from "./standing-facts.ts";

/**
 * Has this lane's person said or drawn who is where? Ends are as one person sees them, so those of an earlier
 * chartist, who may have sat at the other end, are not taken over. SPEC PD16.
 */
export const hasSeenEnds = (log: readonly LoggedEntry[], laneId: string): boolean =>
  standingFacts(log).some(
    (logged) =>
      logged.laneId === laneId &&
      (logged.entry.body.kind === "EndsStated" || logged.entry.body.kind === "PointCharted"),
  );

/**
 * From which point on ends can be put right together: the first since the last change of ends, or since
 * somebody last said who is where, whichever is later; what was drawn before that was drawn by other ends.
 * `undefined` when no point was charted since.
 */
export const firstPointToTurn = (view: MatchView, log: readonly LoggedEntry[]): string | undefined => {
  const statedAt = standingFacts(log).findLast(({ entry }) => entry.body.kind === "EndsStated")?.pos ?? 0;
  const { changesOfEnds } = view.score;
  return view.points.find(({ before, pos }) => before.changesOfEnds === changesOfEnds && pos > statedAt)?.id;
};
