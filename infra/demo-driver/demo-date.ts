import { DEMO_ACADEMY } from "@courtloom/demo";

/** Today's date where the demo academy is, as `2026-05-30`. */
export const demoDate = (nowMs: number): string =>
  new Intl.DateTimeFormat("sv-SE", { timeZone: DEMO_ACADEMY.timeZone, dateStyle: "short" }).format(nowMs);
