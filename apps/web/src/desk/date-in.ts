/** The date at a moment by a zone's clocks, as `2026-05-30`. */
export const dateIn = (timeZone: string, atMs: number): string =>
  new Intl.DateTimeFormat("sv-SE", { timeZone, dateStyle: "short" }).format(atMs);
