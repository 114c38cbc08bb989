import type { ByPlayer } from "@courtloom/core";

/** x of n, with the points it stands on (ids of their entries, in order, one per counted ball). Empty: n = 0. */
export interface Count {
  readonly x: number;
  readonly n: number;
  /** Entry ids, one per attempt: those counted in x, and the others. */
  readonly hits: readonly string[];
  readonly others: readonly string[];
}

/** What one charted player did. Groundstrokes only; balls, never points. SPEC rules D1 to D9. */
export interface PlayerFigures {
  /** Line balls that ended net, wide or long, of line balls tried. */
  readonly lineMissed: Count;
  /** Line balls of own groundstrokes whose direction is known. */
  readonly lineShare: Count;
}

/** Figures of a match; `undefined` for a side that is not charted. */
export type MatchFigures = ByPlayer<PlayerFigures | undefined>;
