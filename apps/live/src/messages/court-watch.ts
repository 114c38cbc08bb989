import {
  type CourtWatch,
  type CourtWatchReply,
  courtWatchShape,
  holdsFigures,
  redactEntries,
  UP,
} from "@courtloom/protocol";
import { authoriseMatch, holdingOf } from "../authority.ts";
import { refuse } from "../refuse.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";

const page = async (
  { matchId, after, screen }: CourtWatch,
  context: MessageContext,
  subscribe: boolean,
): Promise<CourtWatchReply> => {
  const { principal, directory, viewer, subscriptions } = context;
  const event = subscribe ? UP.courtWatch : UP.courtRead;
  const allowed = await authoriseMatch(principal, event, () => context.matchCard(matchId));
  if (!allowed.ok) return refuse(allowed.error);
  const holding = holdingOf(principal, screen === "court" ? "courtPage" : "pad", allowed.value);
  if (holding === "nothing") return refuse("forbidden");
  const sight = holdsFigures(holding) ? "full" : "redacted";
  const room = directory.matchRoom({ academyId: principal.academyId, matchId });
  const key = `court/${matchId}`;
  if (subscribe && !subscriptions.add(key, () => room.unwatch(viewer))) return refuse("busy");
  const read = await room.read(
    after,
    subscribe ? { viewer, sight, still: () => subscriptions.has(key) } : undefined,
  );
  if (!read.ok) return refuse(read.error.code);
  const { incarnation, head, more, entries } = read.value;
  return { ok: true, incarnation, head, more, entries: sight === "full" ? entries : redactEntries(entries) };
};

/** Subscribes to a match and reads its log. */
export const courtWatch: MessageKind<CourtWatch> = {
  shape: courtWatchShape,
  handle: (message, context) => page(message, context, true),
};

/** Reads a match's log without subscribing. */
export const courtRead: MessageKind<CourtWatch> = {
  shape: courtWatchShape,
  handle: (message, context) => page(message, context, false),
};
