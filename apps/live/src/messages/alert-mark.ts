import type { AccountPrincipal } from "@courtloom/core";
import {
  type AlertMark,
  type AlertMarkReply,
  alertMarkShape,
  coachingFactsOf,
  type MarkAsked,
  type RefusalCode,
  UP,
} from "@courtloom/protocol";
import { alertKeyText } from "../alerts/alert-line-of.ts";
import { isNewMark } from "../alerts/alert-marks.ts";
import type { MarkedAlert, StoredMark } from "../alerts/alert-store.ts";
import { mayBeTold } from "../alerts/may-be-told.ts";
import { authoriseMatch } from "../authority.ts";
import { refuse } from "../refuse.ts";
import type { MatchCard } from "../store.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";

const detailsOf = (mark: MarkAsked, { said }: MarkedAlert): StoredMark["details"] => {
  switch (mark.kind) {
    case "assign":
      return { memberId: mark.memberId };
    case "snooze":
      return { reason: mark.reason, until: mark.until, set: said.set };
    case "useful":
      return { useful: mark.useful };
    default:
      return {};
  }
};

/** An alert can only be given to a member whom it may be told to. */
const mayAssign = async (
  { mark }: AlertMark,
  card: MatchCard,
  { principal, alerts }: MessageContext,
): Promise<boolean> => {
  if (mark.kind !== "assign" || mark.memberId === null) return true;
  const members = await alerts.membersOf({ academyId: principal.academyId });
  const to = members.find(({ memberId }) => memberId === mark.memberId);
  return to !== undefined && mayBeTold(to.role, coachingFactsOf(card));
};

const find = async (
  { key }: AlertMark,
  dayId: string,
  { principal, alerts }: MessageContext,
): Promise<MarkedAlert | RefusalCode> => {
  const day = await alerts.store.dayAlerts({ academyId: principal.academyId, dayId });
  if (!day.ok) return "unavailable";
  return day.value.find((alert) => alertKeyText(alert) === alertKeyText(key)) ?? "unknown_match";
};

const write = async (
  message: AlertMark,
  alert: MarkedAlert,
  by: AccountPrincipal,
  { alerts, runtime }: MessageContext,
): Promise<RefusalCode | undefined> => {
  const atMs = runtime.clock.wallMs();
  const { mark, key } = message;
  const made: StoredMark = { kind: mark.kind, by: by.memberId, atMs, details: detailsOf(mark, alert) };
  if (!isNewMark(alert, made)) return undefined;
  const written = await alerts.store.addMark({ academyId: by.academyId, key, mark: made });
  if (!written.ok) return "unavailable";
  return written.value ? undefined : "unknown_match";
};

const handle = async (message: AlertMark, context: MessageContext): Promise<AlertMarkReply> => {
  const { principal, alerts } = context;
  const { matchId } = message.key;
  const allowed = await authoriseMatch(principal, UP.alertMark, () => context.matchCard(matchId));
  if (!allowed.ok) return refuse(allowed.error);
  if (principal.kind !== "account") return refuse("forbidden");
  const card = allowed.value;
  const isToldOf = mayBeTold(principal.role, coachingFactsOf(card));
  if (!isToldOf || card.dayId === null) return refuse("unknown_match");
  const alert = await find(message, card.dayId, context);
  if (typeof alert === "string") return refuse(alert);
  if (!(await mayAssign(message, card, context))) return refuse("forbidden");
  const refusal = await write(message, alert, principal, context);
  if (refusal) return refuse(refusal);
  alerts.touch(principal.academyId, card.dayId);
  return { ok: true };
};

/** What was done about an alert. SPEC AL20, AL21, AL25. */
export const alertMark: MessageKind<AlertMark> = { shape: alertMarkShape, handle };
