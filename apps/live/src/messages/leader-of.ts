import { ok, type Result } from "@courtloom/core";
import type { Leader } from "@courtloom/protocol";
import type { MatchRoom } from "../rooms/match-room.ts";
import type { LaneOwner, LeadLane, Unavailable } from "../store.ts";
import { isHanded, takeOverInMs } from "../take-over.ts";
import type { MessageContext } from "./message-context.ts";

/** A member may be signed in on several devices; a court session is one phone's. */
const isOwnPhone = (owner: LaneOwner, lead: LeadLane): boolean =>
  owner.kind === "courtside" && lead.owner.kind === "courtside" && lead.owner.id === owner.id;

/** Who asks about the lead. `laneId`: a lane of theirs that stands beside it, and may have handed it over. */
export interface LeadAsk {
  readonly room: MatchRoom;
  readonly owner: LaneOwner;
  readonly laneId?: string;
  readonly context: Pick<MessageContext, "principal" | "heard" | "runtime">;
}

/** Whether the lane that asks handed the lead to whoever has it now. */
const handedByAsker = async (lead: LeadLane, { room, laneId }: LeadAsk): Promise<boolean> => {
  const { kind, id } = lead.owner;
  if (laneId === undefined || kind === "desk") return false;
  const handed = await room.handedUntil(laneId, { kind, id });
  // Only said beside the name; while it cannot be asked, the name alone is true as well.
  return handed.ok && handed.value !== undefined;
};

/** Who leads, and in how long the one who asks may take over: at once, where the lead was handed to them. SPEC LV29, LV32, LV34. */
export const leaderOf = async (lead: LeadLane, ask: LeadAsk): Promise<Result<Leader, Unavailable>> => {
  const { room, owner } = ask;
  const { principal, heard, runtime } = ask.context;
  const serverMs = runtime.clock.wallMs();
  const waitMs = takeOverInMs(principal, owner, lead, heard.silentMs(room.ref, serverMs));
  const handed = waitMs > 0 ? await room.handedUntil(lead.laneId, owner) : ok(undefined);
  if (!handed.ok) return handed;
  return ok({
    by: lead.chartist,
    heardMs: heard.get(room.ref)?.heardMs ?? null,
    serverMs,
    takeOverInMs: isHanded(handed.value, serverMs) ? 0 : waitMs,
    ...(isOwnPhone(owner, lead) ? { ownPhone: true } : {}),
    ...((await handedByAsker(lead, ask)) ? { handedOver: true } : {}),
  });
};
