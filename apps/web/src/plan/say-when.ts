/** A moment by the academy's clocks: "30 May 2026, 12:41". */
export const sayWhen = (ms: number, timeZone: string): string =>
  new Intl.DateTimeFormat("en-GB", { timeZone, dateStyle: "medium", timeStyle: "short" }).format(ms);
