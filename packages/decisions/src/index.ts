export { breaksOf, hasBreakSince } from "./alerts/alert-breaks.ts";
export { alertsToTell, MOST_NOTICES } from "./alerts/alerts-to-tell.ts";
export type { AnyAlertState } from "./alerts/rank-alerts.ts";
export { rankAlerts } from "./alerts/rank-alerts.ts";
export type { AlertNow, KnownAlert, OpenOrClosed, Reconciled } from "./alerts/reconcile-alerts.ts";
export { reconcileAlerts } from "./alerts/reconcile-alerts.ts";
export { takenBy } from "./alerts/taken-by.ts";
export type { Ball, Choice, Incoming, Situation } from "./balls/ball.ts";
export type { CountedShot } from "./balls/counted-shots.ts";
export { countedShots } from "./balls/counted-shots.ts";
export type { RallyPhase } from "./balls/rally-phase.ts";
export { RALLY_PHASES } from "./balls/rally-phase.ts";
export { readBalls } from "./balls/read-balls.ts";
export type { Spot } from "./balls/strokes.ts";
export { isKept, isLineBall, isShort, isStroke, spotOf } from "./balls/strokes.ts";
export type { FigureAttempt } from "./figures/attempts-of.ts";
export { attemptsOf } from "./figures/attempts-of.ts";
export { ballsOf } from "./figures/balls-of.ts";
export type { Unit } from "./figures/figure-def.ts";
export type { CellFigure, Count, MatchFigures, PlayerFigures, TargetFigure } from "./figures/figures.ts";
export { figuresOf } from "./figures/figures-of.ts";
export type { FigureName } from "./figures/registry.ts";
export { FIGURE_NAMES, FIGURES, feeds, unitOf } from "./figures/registry.ts";
export type { OpeningInput, PastTallies } from "./freeze-opening.ts";
export { freezeOpening } from "./freeze-opening.ts";
export type { AcademyFit } from "./history/academy-fit.ts";
export { fitAcademy, readAcademyFit } from "./history/academy-fit.ts";
export type { BehindFigure } from "./history/behind-figure.ts";
export { behindFigure } from "./history/behind-figure.ts";
export type { ChoiceBall } from "./history/choice-balls.ts";
export { choiceBalls } from "./history/choice-balls.ts";
export type { CostOfChoices, WeighedChoice } from "./history/choice-cost.ts";
export { costOfChoices } from "./history/choice-cost.ts";
export type { HistoryFigure } from "./history/history-figure.ts";
export { historyCount, historyFigure } from "./history/history-figure.ts";
export type {
  EstimateRow,
  LandingCell,
  LineCell,
  LineSpot,
  LineVerdict,
  WonRow,
} from "./history/line-spot.ts";
export { lineSpots } from "./history/line-spots.ts";
export type { OpponentLevel } from "./history/opponent-level.ts";
export { OPPONENT_LEVELS, opponentLevelOf } from "./history/opponent-level.ts";
export type { PickedMatch } from "./history/picked-match.ts";
export { countPicked, pickMatch } from "./history/picked-match.ts";
export type { PlanAim } from "./history/plan-aim.ts";
export { planAimAt } from "./history/plan-aim.ts";
export type { PointSizeNow } from "./history/point-sizes.ts";
export { importancesOf, pointSizeNow, pointSizes } from "./history/point-sizes.ts";
export type { RateRow } from "./history/rate-row.ts";
export { rateRow } from "./history/rate-row.ts";
export type { ServeBefore } from "./history/serve-before.ts";
export { DEFAULT_SERVE, serveBefore } from "./history/serve-before.ts";
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
export type { EffectivePlan, PlanText, PlayerPlanText } from "./plan-for-player.ts";
export { planForPlayer } from "./plan-for-player.ts";
export type { ReadShot, ShotsToRead } from "./read-shots.ts";
export { readShots } from "./read-shots.ts";
export { STARTER_ASKS } from "./starter-asks.ts";
export { addTallies, sumTallies } from "./tally/add-tallies.ts";
export type { CellKey, TallyCellOf } from "./tally/cell-key.ts";
export { cellKey, parseCellKey } from "./tally/cell-key.ts";
export type { TallyError } from "./tally/read-tally.ts";
export { readTally } from "./tally/read-tally.ts";
export { talliesOf } from "./tally/tallies-of.ts";
export type { LevelTally, Tally, TallyCell, TallyCount, TallyLevel, TallyName } from "./tally/tally.ts";
export { EMPTY_TALLY, TALLY_LEVELS } from "./tally/tally.ts";
export type { SummedCount } from "./tally/tally-count.ts";
export { tallyCells, tallyCount } from "./tally/tally-count.ts";
export type { AcademyRate } from "./usual-rate.ts";
export {
  ACADEMY_ATTEMPTS,
  academyRate,
  academyRateOf,
  usualOf,
  usualRate,
  usualRateFrom,
} from "./usual-rate.ts";
export type { Episode, Moment, Tried, WatchState, WatchView } from "./watches/alert.ts";
export { WATCH_STATES } from "./watches/alert.ts";
export type { WatchDesign } from "./watches/freeze-watch.ts";
export { freezeWatch, WATCH_VERSION } from "./watches/freeze-watch.ts";
export { watchCourse } from "./watches/watch-course.ts";
export { watchDesigns } from "./watches/watch-designs.ts";
export type { WatchedPlayers, WatchSettingProblem, WatchSettings } from "./watches/watch-settings.ts";
export {
  checkWatchSettings,
  DEFAULT_WATCH_SETTINGS,
  HIGHEST_ALPHA,
  MOST_WATCHED,
  settingsForPlayer,
  WATCH_SETTING_PROBLEMS,
  watchSettingProblemText,
} from "./watches/watch-settings.ts";
export { watchesOf } from "./watches/watches-of.ts";
