export type { FinalSet, MatchFormat, TiebreakEnds, TiebreakServe } from "./format.ts";
export type { EndSeen, RawStroke, Seat, SeenPoint } from "./raw-stroke.ts";
export type { ScoreEvent, TimePolicy, UnfinishedGame } from "./score-event.ts";
export type { FinishedSet, MatchStatus, Pause, ScoreState, ServiceSide } from "./score-state.ts";
