import { type AlertsWatch, type AlertsWatchReply, alertsWatchShape, UP } from "@courtloom/protocol";
import { authoriseDay } from "../authority.ts";
import { refuse } from "../refuse.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";

const handle = async ({ dayId }: AlertsWatch, context: MessageContext): Promise<AlertsWatchReply> => {
  const { principal, alerts, viewer, subscriptions } = context;
  const allowed = authoriseDay(principal, UP.alertsWatch, dayId, "staff");
  if (!allowed.ok) return refuse(allowed.error);
  if (principal.kind !== "account") return refuse("forbidden");
  const { academyId, memberId, role } = principal;
  const room = alerts.room(academyId, dayId);
  const key = `alerts/${dayId}`;
  if (!subscriptions.add(key, () => room.unwatch(viewer))) return refuse("busy");
  const answer = await room.watch(viewer, { memberId, role }, () => subscriptions.has(key));
  if (typeof answer !== "string") return answer;
  subscriptions.end(key);
  return refuse(answer);
};

/** Subscribes to a day's alerts. SPEC AL22, AL23. */
export const alertsWatch: MessageKind<AlertsWatch> = { shape: alertsWatchShape, handle };
