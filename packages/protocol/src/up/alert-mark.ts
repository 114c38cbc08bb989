import { RATES } from "@courtloom/match-log";
import { z } from "zod";
import { type AlertKey, SNOOZE_ENDS, type SnoozeEnd } from "../alert-line.ts";
import { idField, versionField } from "../field.ts";
import type { Refusal } from "../refusal.ts";

/** A snooze says why; this long at most, in characters. */
export const MAX_SNOOZE_REASON = 200;

export type MarkAsked =
  | { readonly kind: "seen" | "wake" }
  /** Null: to nobody any more. */
  | { readonly kind: "assign"; readonly memberId: string | null }
  | { readonly kind: "snooze"; readonly reason: string; readonly until: SnoozeEnd }
  | { readonly kind: "useful"; readonly useful: boolean };

/** Say what was done about an alert. The same said twice is said once. */
export interface AlertMark {
  readonly v: number;
  readonly key: AlertKey;
  readonly mark: MarkAsked;
}

const keyShape = z.strictObject({
  matchId: idField,
  playerId: idField,
  rate: z.enum(RATES),
  version: z.number().int().min(1).max(10_000),
  episode: z.number().int().min(1).max(10_000),
}) satisfies z.ZodType<AlertKey>;

const markShape = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.enum(["seen", "wake"]) }),
  z.strictObject({ kind: z.literal("assign"), memberId: idField.nullable() }),
  z.strictObject({
    kind: z.literal("snooze"),
    reason: z.string().trim().min(1).max(MAX_SNOOZE_REASON),
    until: z.enum(SNOOZE_ENDS),
  }),
  z.strictObject({ kind: z.literal("useful"), useful: z.boolean() }),
]) satisfies z.ZodType<MarkAsked>;

export const alertMarkShape = z.strictObject({
  v: versionField,
  key: keyShape,
  mark: markShape,
}) satisfies z.ZodType<AlertMark>;

export type AlertMarkReply = { readonly ok: true } | Refusal;
