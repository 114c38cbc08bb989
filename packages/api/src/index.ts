export type {
  EstimateRow,
  LandingCell,
  LineCell,
  LineSpot,
  LineVerdict,
  RateRow,
  WonRow,
} from "@courtloom/decisions";
export type { Audience, ProcedurePath } from "./access.ts";
export { ACCESS, AUDIENCES } from "./access.ts";
export type { ApiAuth, CookieHeader, IssuedCode, PhoneInUse } from "./api-auth.ts";
export type {
  AcademyRow,
  ApiLog,
  ApiStore,
  AppendTrouble,
  CourtRow,
  DayRow,
  Hand,
  LaneItem,
  MatchRow,
  MatchStage,
  PlayerFile,
} from "./api-store.ts";
export type { ApiContext, DemoLoader, DemoState } from "./context.ts";
export { codesEndMs } from "./day/end-of-day.ts";
export type { DeskCourt, DeskDay } from "./day/get-day.ts";
export type { CreateDemoAccount, DemoStore } from "./demo/demo-store.ts";
export { demoToday } from "./demo/demo-today.ts";
export type { LoadDemo } from "./demo/load-demo.ts";
export { loadDemo } from "./demo/load-demo.ts";
export type { ErrorCode } from "./errors/error-code.ts";
export { ERROR_CODES } from "./errors/error-code.ts";
export type { ErrorData } from "./errors/error-shape.ts";
export { ERROR_TEXT } from "./errors/error-text.ts";
export type { ChoiceCost, ServeBasisRow } from "./figures/choice-cost.ts";
export type { BehindBall, FigurePoint, FigurePoints } from "./figures/figure-points.ts";
export type { FigureRow, LeftOutWhy, UsualRow } from "./figures/figure-row.ts";
export type { ChartedMatchRow, ChoiceFitRow, FigureStore, MatchLogRow } from "./figures/figure-store.ts";
export type { HistoryCache } from "./figures/history-cache.ts";
export { createHistoryCache } from "./figures/history-cache.ts";
export type { HistoryFilter } from "./figures/history-filter.ts";
export type { FilterChoices, HistoryMatch } from "./figures/history-match.ts";
export type { FitRow, LineMap } from "./figures/line-map.ts";
export type { MatchFigureRow, MatchFiguresFile, SizedPoint } from "./figures/match-figures.ts";
export type { PlayerHistory } from "./figures/player-history.ts";
export type { HandlerOptions } from "./handler.ts";
export { createHandler } from "./handler.ts";
export type { CheckedLane } from "./lane/check-file.ts";
export type { TakenLane } from "./lane/take-in-file.ts";
export type { DeskMatch } from "./match/desk-match.ts";
export type { FormatPreset } from "./match/format-presets.ts";
export { FORMAT_PRESETS } from "./match/format-presets.ts";
export { isOwnOrigin } from "./own-origin.ts";
export type { CourtWords } from "./plan/court-words.ts";
export type { PlanFile } from "./plan/get-plan.ts";
export type { PlanSummary } from "./plan/list-plans.ts";
export type { MatchPlan } from "./plan/match-plans.ts";
export type { PlanContent, PlanVersionRow } from "./plan/plan-store.ts";
export { readBody } from "./read-body.ts";
export type { AppRouter } from "./router.ts";
export { appRouter, createCaller } from "./router.ts";
export type { UsualNow, WatchedPlayer, WatchFile } from "./watch/get-watch.ts";
export type { WatchChoice, WatchSettingRow } from "./watch/watch-store.ts";
