import type { Episode, WatchView } from "../watches/alert.ts";

/** An alert that was raised before, as the ledger has it. */
export interface KnownAlert {
  /** Which of its watch's alerts: 1, 2, 3 …, those withdrawn counted too. */
  readonly episode: number;
  readonly isWithdrawn: boolean;
}

export type OpenOrClosed = "standing" | "easing" | "closed";

/** An alert that the log bears out. */
export interface AlertNow {
  /** As in `KnownAlert`; not the number of the episode in the fold. */
  readonly episode: number;
  readonly state: OpenOrClosed;
  /** Entry id of the point that raised it, as the log stands now. */
  readonly raisedBy: string;
}

export interface Reconciled {
  /** Every alert that the log bears out, in order, those that are new with them. */
  readonly alerts: readonly AlertNow[];
  /** Numbers that the ledger does not have yet. */
  readonly raised: readonly number[];
  /** Numbers of those whose evidence a correction took away. */
  readonly withdrawn: readonly number[];
}

const stateOf = (episode: Episode, watch: Pick<WatchView, "state">): OpenOrClosed => {
  if (episode.closedBy !== undefined) return "closed";
  return watch.state === "easing" ? "easing" : "standing";
};

/**
 * What the ledger has to learn from the fold. Episodes and known alerts are paired in order; a known one without an
 * episode is withdrawn for good, an episode without a known one is raised under a number that was never used, so
 * that no transition of a key comes twice, whatever is corrected and however often this is asked. SPEC AL1, AL2.
 */
export const reconcileAlerts = (
  watch: Pick<WatchView, "episodes" | "state">,
  known: readonly KnownAlert[],
): Reconciled => {
  const standing = known.filter(({ isWithdrawn }) => !isWithdrawn).map(({ episode }) => episode);
  const numbers = standing.toSorted((a, b) => a - b);
  const last = Math.max(0, ...known.map(({ episode }) => episode));
  const alerts = watch.episodes.map((episode, i): AlertNow => {
    const number = numbers[i] ?? last + 1 + i - numbers.length;
    return { episode: number, state: stateOf(episode, watch), raisedBy: episode.raisedBy };
  });
  return {
    alerts,
    raised: alerts.slice(numbers.length).map(({ episode }) => episode),
    withdrawn: numbers.slice(watch.episodes.length),
  };
};
