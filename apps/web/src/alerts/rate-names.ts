import type { Rate } from "@courtloom/match-log";

/** What a watch counts, after "x of n"; and what each attempt was, when it counts and when it does not. */
export interface RateNames {
  /** "10 of 14 line balls missed". */
  readonly counted: string;
  readonly hit: string;
  readonly other: string;
  /** The count says itself what was off plan. */
  readonly saysPlan: boolean;
}

/** Every rate that can be watched, in the trade's words. SPEC rule AS10. */
export const RATE_NAMES = {
  lineMissed: { counted: "line balls missed", hit: "missed", other: "made", saysPlan: false },
  lineShare: {
    counted: "groundstrokes down the line",
    hit: "down the line",
    other: "cross-court or middle",
    saysPlan: false,
  },
  keptMissed: {
    counted: "balls missed cross-court or middle",
    hit: "missed",
    other: "made",
    saysPlan: false,
  },
  lineOffPlan: { counted: "line balls off plan", hit: "off plan", other: "on plan", saysPlan: true },
  passedUp: { counted: "agreed moments passed up", hit: "passed up", other: "taken", saysPlan: true },
} as const satisfies Readonly<Record<Rate, RateNames>>;
