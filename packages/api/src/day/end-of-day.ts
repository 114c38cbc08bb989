const DAY_MS = 86_400_000;
/** A late match ends after midnight; codes live on for so long. */
const AFTER_MIDNIGHT_MS = 4 * 3_600_000;

/** How far a zone's clocks are ahead of UTC at a moment, in ms. */
const aheadMs = (timeZone: string, atMs: number): number => {
  const parts = new Intl.DateTimeFormat("en-US", {
    timeZone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    second: "numeric",
  }).formatToParts(atMs);
  const of = (type: Intl.DateTimeFormatPartTypes): number =>
    Number(parts.find((part) => part.type === type)?.value ?? 0);
  const shown = Date.UTC(of("year"), of("month") - 1, of("day"), of("hour"), of("minute"), of("second"));
  return shown - Math.floor(atMs / 1000) * 1000;
};

/**
 * When the codes of a day run out, ms since 1970: four hours after the midnight that ends `date`
 * (`2026-05-30`) by the academy's clocks. Rule AP7.
 */
export const codesEndMs = (date: string, timeZone: string): number => {
  const midnightUtc = Date.parse(`${date}T00:00:00Z`) + DAY_MS;
  const guess = midnightUtc - aheadMs(timeZone, midnightUtc);
  // Clocks may change between the guess and the true midnight; asking again there settles it.
  return midnightUtc - aheadMs(timeZone, guess) + AFTER_MIDNIGHT_MS;
};
