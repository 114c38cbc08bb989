import type { BallFacets, PlanRule } from "@courtloom/match-log";

const SITS_UP: BallFacets = { ballHeight: ["sitsUp"] };
const OPPONENT_WIDE: BallFacets = { opponent: ["wideLeft", "wideRight"] };
const WITH_TIME: BallFacets = { ballTime: ["set"] };

/**
 * An example to begin with, for a coach to change: short low balls mostly straight and forward, short high ones as
 * the player likes; behind the baseline at least 70 % cross-court or middle, the line when the ball sits up or the
 * opponent is off the court, and inside the baseline with time as well. SPEC D18.
 */
export const STARTER_PLAN: readonly PlanRule[] = [
  {
    id: "short-low",
    when: { depth: ["insideServiceLine"], ballHeight: ["low"] },
    aim: "straight",
    lineOn: [],
    targets: [{ choice: "line", wants: "atLeast", share: 0.6, tolerance: 0.1 }],
  },
  {
    id: "short-high",
    when: { depth: ["insideServiceLine"], ballHeight: ["sitsUp", "jumps"] },
    aim: "free",
    lineOn: [],
    targets: [],
  },
  {
    id: "behind-baseline",
    when: { depth: ["behindBaseline"] },
    aim: "keep",
    lineOn: [SITS_UP, OPPONENT_WIDE],
    targets: [{ choice: "kept", wants: "atLeast", share: 0.7, tolerance: 0.05 }],
  },
  {
    id: "inside-baseline",
    when: { depth: ["insideBaseline"] },
    aim: "keep",
    lineOn: [SITS_UP, OPPONENT_WIDE, WITH_TIME],
    targets: [],
  },
];
