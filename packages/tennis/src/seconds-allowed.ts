import type { Pause } from "./score-state.ts";

/** Seconds from the end of a point to the next first serve; events differ, so an event may give its own. */
export interface TimeAllowed {
  readonly betweenPoints: number;
  readonly changeOfEnds: number;
  readonly setBreak: number;
}

export const USUAL_TIME: TimeAllowed = { betweenPoints: 25, changeOfEnds: 90, setBreak: 120 };

/**
 * Seconds allowed in a pause; `null` before the match and after it. A change of ends without rest allows
 * no more than between points. For information only: nobody is penalised by it. SPEC SC37.
 */
export function secondsAllowed(pause: Pause | null, allowed: TimeAllowed = USUAL_TIME): number | null {
  switch (pause) {
    case "point":
    case "noRest":
      return allowed.betweenPoints;
    case "rest":
      return allowed.changeOfEnds;
    case "set":
      return allowed.setBreak;
    case "over":
    case null:
      return null;
  }
}
