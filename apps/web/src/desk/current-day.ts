import { dateIn } from "./date-in.ts";

interface DayOfList {
  readonly dayId: string;
  readonly date: string;
}

/**
 * The day that the start page leads to: today's by the academy's clocks, else the next one, else the last
 * one that was. Undefined without any day. Rule WB4.
 */
export const currentDay = <T extends DayOfList>(
  days: readonly T[],
  timeZone: string,
  nowMs: number,
): T | undefined => {
  const today = dateIn(timeZone, nowMs);
  const byDate = [...days].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return byDate.find((day) => day.date >= today) ?? byDate.at(-1);
};
