import type { AlertLine, AlertState } from "@courtloom/protocol";

const GRAVITY = { standing: 0, easing: 1, withdrawn: 2, closed: 3 } as const satisfies Readonly<
  Record<AlertState, number>
>;

/** Standing first, then easing, each by strength; then what is over, the newest first. Pure. SPEC rule AS15. */
export const rankAlerts = (lines: readonly AlertLine[]): readonly AlertLine[] =>
  [...lines].sort(
    (a, b) =>
      GRAVITY[a.state] - GRAVITY[b.state] ||
      (a.state === "standing" || a.state === "easing" ? b.strength - a.strength : 0) ||
      b.raisedMs - a.raisedMs,
  );
