export { applyScore } from "./apply-score.ts";
export { isChangeOfDirection } from "./change-of-direction.ts";
export type { Channel } from "./channel.ts";
export { acrossNet, CHANNELS, channelAt } from "./channel.ts";
export type { Contact, DepthStruck, Hand, StrokeSide } from "./contact.ts";
export { DEPTHS_STRUCK, depthStruckAt, readContact, strokeSideAt } from "./contact.ts";
export type { CourtPoint } from "./court.ts";
export { BASELINE, COURT, JITTER, SIDELINE } from "./court.ts";
export type { CourtLine } from "./court-lines.ts";
export { COURT_LINES } from "./court-lines.ts";
export type { ShotOrder, StrokeKind } from "./default-kind.ts";
export { defaultKind, STROKE_KINDS } from "./default-kind.ts";
export type { Direction } from "./direction.ts";
export { aimOf, DIRECTIONS, directionBetween, directionOf, isDirectionCertain } from "./direction.ts";
export type { Ended, LandingDepth } from "./ended.ts";
export { ENDINGS, endedAt, isEndedCertain, LANDING_DEPTHS, landingDepth } from "./ended.ts";
export type { FoldError } from "./fold-score.ts";
export { foldErrorText, foldScore } from "./fold-score.ts";
export type { FinalSet, MatchFormat, TiebreakEnds, TiebreakServe } from "./format.ts";
export { TIEBREAK_ENDS, TIEBREAK_SERVES } from "./format.ts";
export type { FormatError } from "./format-error.ts";
export { formatErrorText } from "./format-error.ts";
export { parseFormat } from "./parse-format.ts";
export type { EventError } from "./parse-score-event.ts";
export { eventErrorText, parseScoreEvent } from "./parse-score-event.ts";
export type { Stake } from "./point-situation.ts";
export { isDecidingPoint, pointSituation } from "./point-situation.ts";
export type { PointSize, PointSizeStep } from "./point-size.ts";
export { POINT_SIZE_STEPS, pointSize } from "./point-size.ts";
export type { EndSeen, RawStroke, Seat, SeenPoint } from "./raw-stroke.ts";
export type { ScoreBoard, ScoreSetup } from "./score-board.ts";
export { startScore } from "./score-board.ts";
export type { ScoreError } from "./score-error.ts";
export { scoreErrorText } from "./score-error.ts";
export type { ScoreEvent, TimePolicy, UnfinishedGame } from "./score-event.ts";
export { describePoints, describeSet, describeSets, scoreLine } from "./score-line.ts";
export type { ScorePlace } from "./score-place.ts";
export type { FinishedSet, MatchStatus, Pause, ScoreState, ServiceSide } from "./score-state.ts";
export type { TimeAllowed } from "./seconds-allowed.ts";
export { secondsAllowed, USUAL_TIME } from "./seconds-allowed.ts";
export type { ServeBasis, ServePoints } from "./serve-chance.ts";
export {
  clampServeChance,
  IN_MATCH_STRENGTH,
  SERVE_CHANCE_RANGE,
  serveChanceAgainst,
  serveChanceNow,
} from "./serve-chance.ts";
export type { StrokePath, View } from "./striker-view.ts";
export { endFrom, seenByStriker, seenFrom, turnEnds } from "./striker-view.ts";
export type { Stroke } from "./stroke.ts";
export { insideName, readStroke } from "./stroke.ts";
export type { Surface } from "./surface.ts";
export { SURFACES } from "./surface.ts";
export type { PointImportance, WinChances } from "./win-chances.ts";
export { createWinChances } from "./win-chances.ts";
