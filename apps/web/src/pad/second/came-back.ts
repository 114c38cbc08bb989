import { foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import type { ScoreState } from "@courtloom/tennis";

/** What happened while the phone that led was away. */
export interface CameBack {
  /** The score at which somebody took over. */
  readonly takenAt: ScoreState;
  /** How often the lead went elsewhere since: more than once, and who leads now is not who took over then. */
  readonly times: number;
  /** Points charted on this phone after that. */
  readonly points: number;
}

/**
 * Of a lane that lost the lead: where that was, and how many of its points stand beside the score. Undefined while
 * nobody took over from it. `view`: the fold of `log`.
 */
export const cameBack = (
  log: readonly LoggedEntry[],
  view: MatchView,
  lane: { readonly laneId: string; readonly epoch: number },
): CameBack | undefined => {
  const at = log.findIndex(({ entry: { body } }) => body.kind === "LeadTaken" && body.epoch > lane.epoch);
  if (lane.epoch < 1 || at < 0) return undefined;
  const before = foldLog(log.slice(0, at));
  if (!before.ok) return undefined;
  const aside = new Set(
    view.trail.refused
      .filter(({ laneId, reason }) => laneId === lane.laneId && reason === "notLead")
      .map(({ id }) => id),
  );
  const points = log.filter(({ entry }) => entry.body.kind === "PointCharted" && aside.has(entry.id));
  const times = log.slice(at).filter(({ entry }) => entry.body.kind === "LeadTaken").length;
  return { takenAt: before.value.score, times, points: points.length };
};
