import { ok } from "@courtloom/core";
import {
  holdsFigures,
  type LaneOpen,
  type LaneOpenReply,
  type Leader,
  type LeadTakenRefusal,
  laneOpenShape,
  type RefusalCode,
  redactOpening,
  UP,
} from "@courtloom/protocol";
import { authoriseMatch, holdingOf, laneOwnerOf } from "../authority.ts";
import { refuse } from "../refuse.ts";
import { logError } from "../runtime.ts";
import type { LeadLane, OpenLaneRefused, Unavailable } from "../store.ts";
import { leaderOf } from "./leader-of.ts";
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
  const ask = { room, owner, context };
  const asked = { card: allowed.value, laneId, level, owner, chartist: principal.name };
  const mayTakeOver = async (lead: LeadLane) => {
    const leader = await leaderOf(lead, ask);
    return leader.ok ? ok(leader.value.takeOverInMs === 0) : leader;
  };
  const wish = second ? { second } : takeOver ? { mayTakeOver } : {};
  const opened = await room.openLane({ ...asked, ...wish });
  if (!opened.ok) {
    const { error } = opened;
    if (error.code !== "lead_taken") return refuse(REFUSAL_OF[error.code]);
    const leader = await leaderOf(error.lead, ask);
    return leader.ok ? refuseLead(leader.value) : refuse("unavailable");
  }
  if (!wasOpen) refreshBoard(context, allowed.value.dayId);
  const { opening, lead, incarnation, epoch, cursor, head } = opened.value;
  const mayHoldAll = holdsFigures(holdingOf(principal, "pad", allowed.value));
  const shown = mayHoldAll ? opening : redactOpening(opening);
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
  if (!lead) return { ...begun, leads: false };
  const leader = await leaderOf(lead, { ...ask, laneId });
  return leader.ok ? { ...begun, leads: false, leader: leader.value } : refuse("unavailable");
};

export const laneOpen: MessageKind<LaneOpen> = { shape: laneOpenShape, handle };
