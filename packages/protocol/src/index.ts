export type {
  AlertCount,
  AlertKey,
  AlertLine,
  AlertMarks,
  AlertRun,
  AlertState,
  AlertWithdrawal,
  MarkedBy,
  SnoozeEnd,
} from "./alert-line.ts";
export { ALERT_STATES, SNOOZE_ENDS } from "./alert-line.ts";
export type { CoachingFacts, Holding, HoldingAsked, LiveRole, LiveScreen } from "./coaching.ts";
export {
  coachingFactsOf,
  holdsFigures,
  holdsWords,
  LIVE_ROLES,
  LIVE_SCREENS,
  liveRoleOf,
  mayHold,
  mayHoldAlerts,
} from "./coaching.ts";
export type { AlertNotices, Alerts } from "./down/alerts.ts";
export type { BoardHeard } from "./down/board-heard.ts";
export type { BoardTile } from "./down/board-tile.ts";
export type { CourtEntries } from "./down/court-entries.ts";
export { entryShape, parseEntry } from "./entry-shape.ts";
export { DOWN, UP } from "./events.ts";
export type {
  FiledItem,
  FiledLane,
  LaneFile,
  LaneFileFault,
  ReadLane,
  ReadLaneFile,
} from "./lane-file.ts";
export { readLaneFile } from "./lane-file.ts";
export type { Leader } from "./leader.ts";
export {
  BEAT_EVERY_MS,
  LANE_FILE_FORMAT,
  LANE_FILE_VERSION,
  MAX_BATCH_BYTES,
  MAX_BATCH_ENTRIES,
  MAX_LANE_FILE_BYTES,
  MAX_MESSAGE_BYTES,
  MAX_READ_ENTRIES,
  SOCKET_PATH,
} from "./limits.ts";
export { redactEntries, redactOpening } from "./redact.ts";
export type { Refusal, RefusalCode } from "./refusal.ts";
export { REFUSALS } from "./refusal.ts";
export type {
  Heard,
  Tile,
  TileAlert,
  TileEnds,
  TileFigures,
  TileNextChange,
  TilePause,
  TileProgress,
  TileRate,
  TileScore,
  TileState,
} from "./tile.ts";
export { TILE_ALERT_STATES, TILE_STATES } from "./tile.ts";
export type { AlertMark, AlertMarkReply, MarkAsked } from "./up/alert-mark.ts";
export { alertMarkShape, MAX_SNOOZE_REASON } from "./up/alert-mark.ts";
export type { AlertMember, AlertsSnapshot, AlertsWatch, AlertsWatchReply } from "./up/alerts-watch.ts";
export { alertsWatchShape } from "./up/alerts-watch.ts";
export type { BoardSnapshot, BoardView, BoardWatch, BoardWatchReply } from "./up/board-watch.ts";
export { BOARD_VIEWS, boardWatchShape } from "./up/board-watch.ts";
export type { CourtRead, CourtReadReply } from "./up/court-read.ts";
export { courtReadShape } from "./up/court-read.ts";
export type { CourtPage, CourtWatch, CourtWatchReply } from "./up/court-watch.ts";
export { courtWatchShape } from "./up/court-watch.ts";
export type {
  IdentityConflict,
  LaneAppend,
  LaneAppended,
  LaneAppendReply,
  LaneGap,
  OtherIncarnation,
  RejectedEntry,
} from "./up/lane-append.ts";
export { laneAppendShape } from "./up/lane-append.ts";
export type { LaneBeat, LaneBeatReply, LaneChartist } from "./up/lane-beat.ts";
export { laneBeatShape } from "./up/lane-beat.ts";
export type { LaneOpen, LaneOpened, LaneOpenReply, LeadTakenRefusal } from "./up/lane-open.ts";
export { laneOpenShape } from "./up/lane-open.ts";
export type { Leave, LeaveReply } from "./up/leave.ts";
export { leaveShape } from "./up/leave.ts";
export { OLDEST_PROTOCOL_VERSION, PROTOCOL_VERSION } from "./version.ts";
