import type { Principal } from "@courtloom/core";
import { type BoardWatch, type BoardWatchReply, boardWatchShape, UP } from "@courtloom/protocol";
import { authoriseDay } from "../authority.ts";
import { refuse } from "../refuse.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";

const roleOf = (principal: Principal) => (principal.kind === "account" ? principal.role : "coach");

const handle = async (message: BoardWatch, context: MessageContext): Promise<BoardWatchReply> => {
  const { principal, directory, viewer, subscriptions } = context;
  const { dayId, view } = message;
  const allowed = authoriseDay(principal, UP.boardWatch, dayId, view);
  if (!allowed.ok) return refuse(allowed.error);
  const board = directory.boardRoom(principal.academyId, dayId);
  const key = `board/${dayId}`;
  if (!subscriptions.add(key, () => board.unwatch(viewer))) return refuse("busy");
  const snapshot = await board.watch(viewer, view, () => subscriptions.has(key), roleOf(principal));
  if (snapshot) return snapshot;
  subscriptions.end(key);
  return refuse("unknown_day");
};

export const boardWatch: MessageKind<BoardWatch> = { shape: boardWatchShape, handle };
