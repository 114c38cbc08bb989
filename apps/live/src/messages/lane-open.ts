import {
  type LaneOpen,
  type LaneOpenReply,
  laneOpenShape,
  type RefusalCode,
  redactOpening,
  UP,
} from "@courtloom/protocol";
import { authoriseMatch, laneOwnerOf, sightOf } from "../authority.ts";
import { refuse } from "../refuse.ts";
import { logError } from "../runtime.ts";
import type { OpenLaneRefused, Unavailable } from "../store.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";

const REFUSAL_OF = {
  unknown_match: "unknown_match",
  // Opened a moment ago and gone since: the log was replaced in between.
  not_open: "unavailable",
  sealed: "sealed",
  other_owner: "forbidden",
  lead_taken: "lead_taken",
  unavailable: "unavailable",
} as const satisfies Readonly<Record<(OpenLaneRefused | Unavailable)["code"], RefusalCode>>;

/** The board of the day shows at once that the match is no longer waiting; failing, it does so within two seconds. */
const refreshBoard = ({ directory, runtime, principal }: MessageContext, dayId: string | null): void => {
  const board = dayId === null ? undefined : directory.findBoard(principal.academyId, dayId);
  board?.refresh().catch((error: unknown) => logError(runtime, "a board was not refreshed", { error }));
};

const handle = async (message: LaneOpen, context: MessageContext): Promise<LaneOpenReply> => {
  const { principal, directory, heard, runtime } = context;
  const { matchId, laneId, level } = message;
  const allowed = await authoriseMatch(principal, UP.laneOpen, () => context.matchCard(matchId));
  if (!allowed.ok) return refuse(allowed.error);
  const owner = laneOwnerOf(principal);
  if (!owner || principal.kind === "wall") return refuse("forbidden");
  const { academyId } = principal;
  const room = directory.matchRoom({ academyId, matchId });
  const wasOpen = room.pos() > 0;
  const opened = await room.openLane({ card: allowed.value, laneId, level, owner, chartist: principal.name });
  if (!opened.ok) return refuse(REFUSAL_OF[opened.error.code]);
  if (!wasOpen) refreshBoard(context, allowed.value.dayId);
  const unsent = heard.get({ academyId, matchId })?.unsent ?? 0;
  if (room.head()?.leadLaneId === laneId) {
    heard.speak({ academyId, matchId, heardMs: runtime.clock.wallMs(), unsent });
  }
  const { opening, incarnation, epoch, cursor, head } = opened.value;
  const shown = sightOf(principal) === "full" ? opening : redactOpening(opening);
  return { ok: true, incarnation, epoch, cursor, head, opening: shown, chartist: principal.name };
};

export const laneOpen: MessageKind<LaneOpen> = { shape: laneOpenShape, handle };
