export type { LaneComparison, LaneRow, LaneRowKind } from "./compare-lanes.ts";
export { compareLanes, lanesBeside } from "./compare-lanes.ts";
export type * from "./entry.ts";
export { DESK_LANE, ENTRY_VERSION, SECOND_EPOCH } from "./entry.ts";
export type { FoldError } from "./fold.ts";
export { applyEntry, foldLog, startView } from "./fold.ts";
export { logOfLane } from "./log-of-lane.ts";
export type { MissedStretch } from "./missed-stretches.ts";
export { missedStretches } from "./missed-stretches.ts";
export type { Ask, CoachingMode, MatchOpened, OpenedPlayer, Rate, ShotAsks, UsualRate } from "./opened.ts";
export { ASKS, COACHING_MODES, RATES } from "./opened.ts";
export type { BallFacets, FrozenPlan, PlanChoice, PlanRule, RuleAim, ShareTarget } from "./plan.ts";
export { PLAN_CHOICES, RULE_AIMS } from "./plan.ts";
export type { ChartingLevel, Point, Serve, ServeOutcome } from "./point.ts";
export { CHARTING_LEVELS, SERVE_OUTCOMES } from "./point.ts";
export type { PointDifference } from "./point-differences.ts";
export { scoreRefusal } from "./score-refusal.ts";
export type {
  BallHeight,
  BallTime,
  LeftOut,
  Miss,
  OpponentPlace,
  Shot,
  ShotKind,
  ShotResult,
} from "./shot.ts";
export {
  BALL_HEIGHTS,
  BALL_TIMES,
  MISSES,
  OPPONENT_PLACES,
  SET_ASIDE_REASONS,
  SHOT_KINDS,
  SHOT_RESULTS,
} from "./shot.ts";
export type { TimelineFact } from "./timeline.ts";
export { timelineOf } from "./timeline.ts";
export type { MatchView, SetAside, SetAsideReason, ViewedPoint } from "./view.ts";
export { SET_ASIDE } from "./view.ts";
export type { FrozenWatch } from "./watch.ts";
