import { z } from "zod";
import type { AlertKey, AlertLine } from "../alert-line.ts";
import { idField, versionField } from "../field.ts";
import type { Refusal } from "../refusal.ts";

/** Subscribe to the alerts of a day; staff only. */
export interface AlertsWatch {
  readonly v: number;
  readonly dayId: string;
}

export const alertsWatchShape = z.strictObject({
  v: versionField,
  dayId: idField,
}) satisfies z.ZodType<AlertsWatch>;

/** Whom an alert can be given to. */
export interface AlertMember {
  readonly memberId: string;
  readonly name: string;
}

/** `notices`: alerts that this person is told of now and was not before. Of a coach's list alerts between two own players are left out. */
export interface AlertsSnapshot {
  readonly ok: true;
  readonly dayId: string;
  readonly serverMs: number;
  readonly alerts: readonly AlertLine[];
  readonly notices: readonly AlertKey[];
  readonly members: readonly AlertMember[];
}

export type AlertsWatchReply = AlertsSnapshot | Refusal;
