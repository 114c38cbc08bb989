const FORM = new Intl.DateTimeFormat("en-GB", {
  timeZone: "UTC",
  weekday: "short",
  day: "numeric",
  month: "long",
  year: "numeric",
});

/** `2026-05-30` as people say it: "Sat, 30 May 2026". */
export const sayDate = (date: string): string => FORM.format(Date.parse(`${date}T00:00:00Z`));
