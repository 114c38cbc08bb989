const DAY_MS = 86_400_000;

/** The date so many days before one, both as "2026-05-30". */
export const daysBefore = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) - days * DAY_MS).toISOString().slice(0, 10);

/** Periods that are asked for most, in days back from today. */
export const PERIODS = [
  { label: "30 days", days: 30 },
  { label: "3 months", days: 91 },
  { label: "12 months", days: 365 },
] as const;
