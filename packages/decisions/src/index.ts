export type { Ball, Choice, Incoming, Situation } from "./balls/ball.ts";
export type { RallyPhase } from "./balls/rally-phase.ts";
export { RALLY_PHASES } from "./balls/rally-phase.ts";
export { readBalls } from "./balls/read-balls.ts";
export type { CountedShot } from "./counted-shots.ts";
export { countedShots } from "./counted-shots.ts";
export type { Count, MatchFigures, PlayerFigures } from "./figures.ts";
export { figuresOf } from "./figures-of.ts";
export type { OpeningInput, PastTallies } from "./freeze-opening.ts";
export { freezeOpening, usualRate } from "./freeze-opening.ts";
export type { FigureName } from "./level-feeds.ts";
export { feeds } from "./level-feeds.ts";
export { asksOfPlan } from "./plan/asks-of-plan.ts";
export type { Facet, Fit, KnownFacets } from "./plan/facets-fit.ts";
export { FACET_VALUES, FACETS, facetsFit } from "./plan/facets-fit.ts";
export type { BallToJudge } from "./plan/judge-ball.ts";
export { isJudgedKind, judgeBall } from "./plan/judge-ball.ts";
export { parsePlanRules } from "./plan/parse-plan-rules.ts";
export type { PlanProblem, PlanProblemCode } from "./plan/plan-problem.ts";
export { PLAN_PROBLEMS, planProblemText } from "./plan/plan-problem.ts";
export { STARTER_PLAN } from "./plan/starter-plan.ts";
export type { Because, BecauseCode, Judgement, Verdict } from "./plan/verdict.ts";
export { VERDICTS } from "./plan/verdict.ts";
export type {
  EffectivePlan,
  EffectivePlan,
  PlanText,
  PlanText,
  PlayerPlanText,
  PlayerPlanText,
} from "./plan-for-player.ts";
export { planForPlayer, planForPlayer } from "./plan-for-player.ts";
export type { ReadShot, ShotsToRead } from "./read-shots.ts";
export { readShots } from "./read-shots.ts";
export { STARTER_ASKS } from "./starter-asks.ts";
export type { Tally } from "./tally.ts";
export { tallyOf } from "./tally.ts";
