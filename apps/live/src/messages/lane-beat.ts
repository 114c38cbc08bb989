import { type LaneBeat, type LaneBeatReply, laneBeatShape, UP } from "@courtloom/protocol";
import { authoriseMatch, laneOwnerOf, mayContinue } from "../authority.ts";
import { refuse } from "../refuse.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";

/** Only the lead's phone says whether its court is heard. Every phone hears whose the other lanes are. */
const handle = async (message: LaneBeat, context: MessageContext): Promise<LaneBeatReply> => {
  const { principal, directory, heard, runtime } = context;
  const { matchId, laneId, unsent } = message;
  const allowed = await authoriseMatch(principal, UP.laneBeat, () => context.matchCard(matchId));
  if (!allowed.ok) return refuse(allowed.error);
  const match = { academyId: principal.academyId, matchId };
  const room = directory.matchRoom(match);
  const asks = laneOwnerOf(principal);
  if (!asks || !mayContinue(room.ownerOf(laneId), asks)) return refuse("unknown_lane");
  const serverMs = runtime.clock.wallMs();
  // Until the head could be read nobody is told that the lead is gone.
  const leads = (room.head()?.leadLaneId ?? laneId) === laneId;
  if (leads) heard.speak({ ...match, heardMs: serverMs, unsent });
  const others = room.chartists().filter((lane) => lane.laneId !== laneId);
  return { ok: true, serverMs, leads, ...(others.length > 0 ? { others } : {}) };
};

export const laneBeat: MessageKind<LaneBeat> = { shape: laneBeatShape, handle };
