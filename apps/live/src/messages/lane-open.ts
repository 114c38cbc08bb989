import {
  type LaneOpen,
  type LaneOpenReply,
  type Leader,
  type LeadTakenRefusal,
  laneOpenShape,
  type RefusalCode,
  redactOpening,
  UP,
} from "@courtloom/protocol";
import { authoriseMatch, laneOwnerOf, sightOf } from "../authority.ts";
import { refuse } from "../refuse.ts";
import { logError } from "../runtime.ts";
import type { LaneOwner, LeadLane, MatchRef, OpenLaneRefused, Unavailable } from "../store.ts";
import { takeOverInMs } from "../take-over.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";

const REFUSAL_OF = {
  unknown_match: "unknown_match",
  // Opened a moment ago and gone since: the log was replaced in between.
  not_open: "unavailable",
  sealed: "sealed",
  other_owner: "forbidden",
  unavailable: "unavailable",
} as const satisfies Readonly<
  Record<Exclude<(OpenLaneRefused | Unavailable)["code"], "lead_taken">, RefusalCode>
>;

/** The board of the day shows at once that the match is no longer waiting; failing, it does so within two seconds. */
const refreshBoard = ({ directory, runtime, principal }: MessageContext, dayId: string | null): void => {
  const board = dayId === null ? undefined : directory.findBoard(principal.academyId, dayId);
  board?.refresh().catch((error: unknown) => logError(runtime, "a board was not refreshed", { error }));
};

/** A phone that waits for the lead hears this often how the leading one fares. */
const LOOK_AGAIN_MS = 3_000;
const SOONEST_MS = 500;

/** A member may be signed in on several devices; a court session is one phone's. */
const isOwnPhone = (owner: LaneOwner, lead: LeadLane): boolean =>
  owner.kind === "courtside" && lead.owner.kind === "courtside" && lead.owner.id === owner.id;

const leaderOf = (lead: LeadLane, owner: LaneOwner, match: MatchRef, context: MessageContext): Leader => {
  const { principal, heard, runtime } = context;
  const serverMs = runtime.clock.wallMs();
  return {
    by: lead.chartist,
    heardMs: heard.get(match)?.heardMs ?? null,
    serverMs,
    takeOverInMs: takeOverInMs(principal, owner, lead, heard.silentMs(match, serverMs)),
    ...(isOwnPhone(owner, lead) ? { ownPhone: true } : {}),
  };
};

const refuseLead = (leader: Leader): LeadTakenRefusal => {
  const dueMs = leader.takeOverInMs === 0 ? LOOK_AGAIN_MS : leader.takeOverInMs;
  const afterMs = Math.max(SOONEST_MS, Math.min(LOOK_AGAIN_MS, dueMs));
  return { ...refuse("lead_taken", afterMs), code: "lead_taken", leader };
};

const handle = async (message: LaneOpen, context: MessageContext): Promise<LaneOpenReply> => {
  const { principal, directory } = context;
  const { matchId, laneId, level, takeOver, second } = message;
  const allowed = await authoriseMatch(principal, UP.laneOpen, () => context.matchCard(matchId));
  if (!allowed.ok) return refuse(allowed.error);
  const owner = laneOwnerOf(principal);
  if (!owner || principal.kind === "wall") return refuse("forbidden");
  const match = { academyId: principal.academyId, matchId };
  const room = directory.matchRoom(match);
  const wasOpen = room.pos() > 0;
  const leader = (lead: LeadLane): Leader => leaderOf(lead, owner, match, context);
  const asked = { card: allowed.value, laneId, level, owner, chartist: principal.name };
  const mayTakeOver = (lead: LeadLane): boolean => leader(lead).takeOverInMs === 0;
  const wish = second ? { second } : takeOver ? { mayTakeOver } : {};
  const opened = await room.openLane({ ...asked, ...wish });
  if (!opened.ok) {
    const { error } = opened;
    return error.code === "lead_taken" ? refuseLead(leader(error.lead)) : refuse(REFUSAL_OF[error.code]);
  }
  if (!wasOpen) refreshBoard(context, allowed.value.dayId);
  const { opening, lead, incarnation, epoch, cursor, head } = opened.value;
  const shown = sightOf(principal) === "full" ? opening : redactOpening(opening);
  const begun = {
    ok: true,
    incarnation,
    epoch,
    cursor,
    head,
    opening: shown,
    chartist: principal.name,
  } as const;
  if (lead?.laneId === laneId) return { ...begun, leads: true };
  return { ...begun, leads: false, ...(lead ? { leader: leader(lead) } : {}) };
};

export const laneOpen: MessageKind<LaneOpen> = { shape: laneOpenShape, handle };
