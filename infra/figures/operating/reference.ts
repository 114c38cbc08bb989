import type { Past } from "./condition.ts";

/** What the chosen rule was found to do before it was built, in shares; 25 points per nat and 21 nodes. */
interface Reference {
  readonly falseAlarms: number;
  /** 90th percentile of players' own. */
  readonly high: number;
  /** Found within thirty attempts when the odds are doubled, and trebled. */
  readonly found: readonly [number, number];
}

/** By past matches. SPEC OP3. */
export const REFERENCE: Readonly<Record<Past, Reference>> = {
  0: { falseAlarms: 0.048, high: 0.141, found: [0.26, 0.46] },
  5: { falseAlarms: 0.05, high: 0.109, found: [0.34, 0.62] },
  20: { falseAlarms: 0.049, high: 0.08, found: [0.36, 0.65] },
  60: { falseAlarms: 0.048, high: 0.067, found: [0.36, 0.66] },
};
