import { foldLog, type LoggedEntry, logOfLane, type MatchView } from "@courtloom/match-log";

/** A log and what it folds to; undefined until the opening is known. */
export interface ToldMatch {
  readonly log: readonly LoggedEntry[];
  readonly view: MatchView | undefined;
}

const foldOf = (log: readonly LoggedEntry[]): ToldMatch => {
  const folded = foldLog(log);
  return { log, view: folded.ok ? folded.value : undefined };
};

/**
 * The match as this phone charts it, and the whole of it as everybody has it. They are one and the same unless
 * the phone charts as second: then its own score is that of its own entries.
 */
export const tellMatch = (
  log: readonly LoggedEntry[],
  lane: { readonly laneId: string; readonly second?: true },
): ToldMatch & { readonly whole: ToldMatch } => {
  const whole = foldOf(log);
  return { ...(lane.second ? foldOf(logOfLane(log, lane.laneId)) : whole), whole };
};
