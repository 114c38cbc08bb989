import { DEMO_ACADEMY } from "@courtloom/demo";

/** Today's date where the demonstration academy is, as `2026-05-30`. */
export const demoToday = (nowMs: number): string =>
  new Intl.DateTimeFormat("sv-SE", { timeZone: DEMO_ACADEMY.timeZone, dateStyle: "short" }).format(nowMs);
