import { err, ok, type Principal, type Result } from "@courtloom/core";
import {
  type BoardView,
  coachingFactsOf,
  type Holding,
  type LiveScreen,
  liveRoleOf,
  mayHold,
  type RefusalCode,
  UP,
} from "@courtloom/protocol";
import type { LaneOwner, MatchCard } from "./store.ts";

type UpEvent = (typeof UP)[keyof typeof UP];

/**
 * Which matches or days a message may name. `academy`: all of the principal's academy. `ownCourt`: matches
 * on the principal's court and day. `ownDay`: the principal's day, as a wall shows it. `nothing`: the
 * message is not theirs to send. `leaving`: only ends what they follow themselves.
 */
type Reach = "academy" | "ownCourt" | "ownDay" | "nothing" | "leaving";

/** Who may send what about which match or day. The only place where this is said. SPEC LV15. */
export const REACH = {
  [UP.laneOpen]: { account: "academy", courtside: "ownCourt", wall: "nothing" },
  [UP.laneAppend]: { account: "academy", courtside: "ownCourt", wall: "nothing" },
  [UP.laneBeat]: { account: "academy", courtside: "ownCourt", wall: "nothing" },
  [UP.courtWatch]: { account: "academy", courtside: "ownCourt", wall: "nothing" },
  [UP.courtRead]: { account: "academy", courtside: "ownCourt", wall: "nothing" },
  [UP.courtLeave]: { account: "leaving", courtside: "leaving", wall: "leaving" },
  [UP.boardWatch]: { account: "academy", courtside: "nothing", wall: "ownDay" },
  [UP.boardLeave]: { account: "leaving", courtside: "leaving", wall: "leaving" },
  [UP.alertsWatch]: { account: "academy", courtside: "nothing", wall: "nothing" },
  [UP.alertsLeave]: { account: "leaving", courtside: "leaving", wall: "leaving" },
  [UP.alertMark]: { account: "academy", courtside: "nothing", wall: "nothing" },
} as const satisfies Readonly<Record<UpEvent, Readonly<Record<Principal["kind"], Reach>>>>;

/** What of a match may arrive at this principal's screen, as coaching stands now. SPEC LV16. */
export const holdingOf = (principal: Principal, screen: LiveScreen, card: MatchCard): Holding =>
  mayHold({ screen, role: liveRoleOf(principal), ...coachingFactsOf(card) });

/**
 * May `principal` send `event` about the match that `look` finds in the principal's academy? A match of
 * others answers as one that does not exist.
 */
export const authoriseMatch = async (
  principal: Principal,
  event: UpEvent,
  look: () => Promise<MatchCard | undefined>,
): Promise<Result<MatchCard, RefusalCode>> => {
  const reach: Reach = REACH[event][principal.kind];
  if (reach === "nothing" || reach === "ownDay") return err("forbidden");
  const card = await look();
  if (!card || card.academyId !== principal.academyId) return err("unknown_match");
  const here =
    principal.kind === "courtside" && card.courtId === principal.courtId && card.dayId === principal.dayId;
  return reach === "academy" || here ? ok(card) : err("unknown_match");
};

/** The same for a day's board; whether the academy has the day is for the board to say. */
export const authoriseDay = (
  principal: Principal,
  event: UpEvent,
  dayId: string,
  view: BoardView,
): Result<void, RefusalCode> => {
  const reach: Reach = REACH[event][principal.kind];
  if (reach === "academy") return ok(undefined);
  if (reach !== "ownDay" || principal.kind !== "wall") return err("forbidden");
  if (view !== "wall") return err("forbidden");
  return principal.dayId === dayId ? ok(undefined) : err("unknown_day");
};

/** Who a lane that this principal opens belongs to; a wall opens none. */
export const laneOwnerOf = (principal: Principal): LaneOwner | undefined => {
  if (principal.kind === "account") return { kind: "member", id: principal.memberId };
  return principal.kind === "courtside" ? { kind: "courtside", id: principal.sessionId } : undefined;
};

/**
 * May somebody go on in a lane of `had`? A courtside session that ran out is replaced by another of the same
 * court, whose unsent entries must still find their lane; a member's lane is theirs alone. SPEC LV17.
 */
export const mayContinue = (had: LaneOwner | undefined, asks: LaneOwner): boolean =>
  had !== undefined && had.kind === asks.kind && (had.kind === "courtside" || had.id === asks.id);
