import type { AlertKey, AlertLine } from "../alert-line.ts";

/** All alerts of a day, whenever one of them or what was done about it changed. */
export interface Alerts {
  readonly dayId: string;
  readonly serverMs: number;
  readonly alerts: readonly AlertLine[];
}

/** To one person: alerts to be told of now. Each comes once, however often anything is restarted. */
export interface AlertNotices {
  readonly dayId: string;
  readonly notices: readonly AlertKey[];
}
