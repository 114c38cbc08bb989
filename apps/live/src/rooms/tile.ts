import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import {
  type BoardView,
  coachingFactsOf,
  type Heard,
  holdsFigures,
  type LiveRole,
  type LiveScreen,
  mayHold,
  mayHoldAlerts,
  type Tile,
  type TileAlert,
  type TileState,
} from "@courtloom/protocol";
import type { CourtCard, MatchCard, MatchHead } from "../store.ts";
import { tileEndsOf } from "./tile-ends.ts";
import { tileFiguresOf } from "./tile-figures.ts";
import { tileProgressOf } from "./tile-progress.ts";
import { tileScoreOf } from "./tile-score.ts";

/** Everything that a tile is made of. `view` and `head` are of the court's current match. */
export interface TileFacts {
  readonly court: CourtCard;
  readonly view: MatchView | undefined;
  readonly head: MatchHead | undefined;
  /** Who charts beside the lead. */
  readonly seconds: readonly string[];
  readonly heard: { readonly heardMs: number; readonly unsent: number } | undefined;
  /** What the match's watches say, the gravest first; staff are told. */
  readonly alerts?: readonly TileAlert[];
  /** When the pause that stands began, by this node's clock; undefined where it is not known. */
  readonly pauseSinceMs?: number | undefined;
}

export type StaffRole = Extract<LiveRole, "director" | "coach">;

const hasBegun = ({ score, points }: MatchView): boolean =>
  points.length > 0 || score.sets.length > 0 || [...score.games, ...score.points].some((count) => count > 0);

/** What the day's tables alone can say: the log is not there yet, or cannot be read just now. */
const WITHOUT_VIEW: Readonly<Record<MatchCard["stage"], TileState>> = {
  waiting: "waiting",
  open: "playing",
  over: "over",
  sealed: "over",
};

const stateOf = (current: MatchCard | null, view: MatchView | undefined): TileState => {
  if (!current) return "empty";
  if (!view) return WITHOUT_VIEW[current.stage];
  if (view.score.over || view.sealed) return "over";
  if (view.suspended) return "suspended";
  return hasBegun(view) ? "playing" : "waiting";
};

const namesOf = (match: MatchCard): ByPlayer<string> =>
  byPlayer((side: Side) => {
    const partner = match.partners[side];
    const { displayName } = match.players[side];
    return partner ? `${displayName} / ${partner.displayName}` : displayName;
  });

const nextOf = ([next]: readonly MatchCard[]): string | null => {
  if (!next) return null;
  const names = namesOf(next);
  return `${names.A} – ${names.B}`;
};

/** When the phone was heard tells how old the score is; what it has not sent is the staff's to know. */
const heardOf = (facts: TileFacts, board: BoardView): Heard | null => {
  const { court, heard } = facts;
  if (!court.current || !heard) return null;
  const { matchId } = court.current;
  return { matchId, heardMs: heard.heardMs, unsent: board === "staff" ? heard.unsent : null };
};

/** Who sees a view at the least: whoever else does holds no less of a tile. */
const SEEN_BY = {
  staff: { screen: "staffBoard", role: "coach" },
  wall: { screen: "publicWall", role: "wall" },
} as const satisfies Readonly<Record<BoardView, { readonly screen: LiveScreen; readonly role: LiveRole }>>;

const showsFigures = (board: BoardView, current: MatchCard): boolean =>
  holdsFigures(mayHold({ ...SEEN_BY[board], ...coachingFactsOf(current) }));

const alertsFor = (current: MatchCard, alerts: readonly TileAlert[], role: StaffRole) =>
  alerts.length > 0 && mayHoldAlerts({ screen: "staffBoard", role, ...coachingFactsOf(current) })
    ? { alerts }
    : {};

const staffOf = (
  current: MatchCard,
  view: MatchView,
  { head, seconds, pauseSinceMs, alerts = [] }: TileFacts,
  role: StaffRole,
): NonNullable<Tile["staff"]> => {
  const ends = tileEndsOf(view, pauseSinceMs);
  return {
    chartist: head?.chartist ?? null,
    ...(seconds.length > 0 ? { seconds } : {}),
    level: view.points.length > 0 ? view.level : (head?.level ?? view.level),
    coachingMode: current.coachingMode,
    bothOwn: coachingFactsOf(current).bothOwn,
    setAsideCount: view.setAside.length,
    figures: tileFiguresOf(view),
    playerIds: byPlayer((side) => current.players[side].playerId),
    ...(ends ? { ends } : {}),
    progress: tileProgressOf(view),
    ...alertsFor(current, alerts, role),
  };
};

/** One court of a board. A wall's tile is made without figures; they are not left out later. SPEC LV9, LV10. */
export const tileOf = (facts: TileFacts, board: BoardView, role: StaffRole = "coach"): Tile => {
  const { court, view } = facts;
  const { current } = court;
  return {
    courtId: court.courtId,
    courtNo: court.no,
    courtName: court.name,
    state: stateOf(current, view),
    matchId: current?.matchId ?? null,
    pos: view?.pos ?? 0,
    names: current ? namesOf(current) : null,
    own: current ? byPlayer((side) => current.players[side].own) : null,
    score: view ? tileScoreOf(view.score) : null,
    next: nextOf(court.next),
    heard: heardOf(facts, board),
    ...(current && view && showsFigures(board, current)
      ? { staff: staffOf(current, view, facts, role) }
      : {}),
  };
};
