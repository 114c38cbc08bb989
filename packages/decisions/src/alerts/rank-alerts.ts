import type { OpenOrClosed } from "./reconcile-alerts.ts";

export type AnyAlertState = OpenOrClosed | "withdrawn";

const ORDER: Readonly<Record<AnyAlertState, number>> = { standing: 0, easing: 1, closed: 2, withdrawn: 3 };

interface Ranked {
  readonly state: AnyAlertState;
  /** Evidence against its threshold, in [0, 1]. */
  readonly strength: number;
  readonly raisedMs: number;
}

/** The gravest first: standing, easing, closed, withdrawn; then the stronger; then the older. SPEC AL4. */
export const rankAlerts = <T extends Ranked>(alerts: readonly T[]): readonly T[] =>
  alerts.toSorted(
    (a, b) => ORDER[a.state] - ORDER[b.state] || b.strength - a.strength || a.raisedMs - b.raisedMs,
  );
