import type { AnyAlertState } from "./rank-alerts.ts";

/** Of one match, to one person: so many notices in one change of ends, and so many in all. SPEC AL6. */
export const MOST_NOTICES = { atBreak: 3, inMatch: 5 } as const;

interface Tellable {
  readonly state: AnyAlertState;
  readonly strength: number;
  /** Ends were changed, a set ended or the match, since it was raised. */
  readonly isDue: boolean;
  readonly isSnoozed: boolean;
}

/** Alerts of one match that staff are to be told of, the strongest first: open, due, and not snoozed. SPEC AL5. */
export const alertsToTell = <T extends Tellable>(alerts: readonly T[]): readonly T[] =>
  alerts
    .filter(
      ({ state, isDue, isSnoozed }) => (state === "standing" || state === "easing") && isDue && !isSnoozed,
    )
    .toSorted((a, b) => b.strength - a.strength);
