import { type LaneAppendReply, laneAppendShape, type RejectedEntry, UP } from "@courtloom/protocol";
import { authoriseMatch, laneOwnerOf, mayContinue } from "../authority.ts";
import { refuse } from "../refuse.ts";
import type { MatchRoom } from "../rooms/match-room.ts";
import type { AppendItem } from "../store.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";
import { readBatch } from "./read-batch.ts";

/** The envelope; its entries are read one by one. */
interface Envelope {
  readonly matchId: string;
  readonly laneId: string;
  readonly incarnation: string;
  readonly entries: readonly unknown[];
}

const rejectedOf = (items: readonly AppendItem[], upTo: number): readonly RejectedEntry[] =>
  items.flatMap((item) =>
    "rejected" in item && item.n <= upTo ? [{ n: item.n, code: item.rejected.code }] : [],
  );

const replyOf = (
  appended: Awaited<ReturnType<MatchRoom["append"]>>,
  items: readonly AppendItem[],
): LaneAppendReply => {
  if (appended.ok) {
    const { kind, upTo, head } = appended.value;
    return { ok: true, kind, upTo, head, rejected: rejectedOf(items, upTo) };
  }
  const { error } = appended;
  switch (error.code) {
    case "gap":
      return { ok: false, code: "gap", expect: error.expect };
    case "identity_conflict":
      return { ok: false, code: "identity_conflict", n: error.n };
    case "other_incarnation":
      return { ok: false, code: "other_incarnation", incarnation: error.incarnation };
    default:
      return refuse(error.code);
  }
};

const handle = async (message: Envelope, context: MessageContext): Promise<LaneAppendReply> => {
  const { principal, directory, heard, runtime } = context;
  const { matchId, laneId, incarnation } = message;
  const items = readBatch(message.entries);
  if (!items.ok) return refuse(items.error);
  const allowed = await authoriseMatch(principal, UP.laneAppend, () => context.matchCard(matchId));
  if (!allowed.ok) return refuse(allowed.error);
  const match = { academyId: principal.academyId, matchId };
  const room = directory.matchRoom(match);
  const asks = laneOwnerOf(principal);
  // A lane that was not opened here since this node began: opening it again is what tells whose it is.
  if (!asks || !mayContinue(room.ownerOf(laneId), asks)) return refuse("unknown_lane");
  if (room.head()?.leadLaneId === laneId) {
    heard.speak({ ...match, heardMs: runtime.clock.wallMs(), unsent: heard.get(match)?.unsent ?? 0 });
  }
  return replyOf(await room.append(laneId, incarnation, items.value), items.value);
};

export const laneAppend: MessageKind<Envelope> = { shape: laneAppendShape, handle };
