const formats = new Map<string, Intl.DateTimeFormat>();

const makeFormat = (timeZone: string, withSeconds: boolean): Intl.DateTimeFormat =>
  new Intl.DateTimeFormat("en-GB", {
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone,
    ...(withSeconds ? { second: "2-digit" } : {}),
  });

/** A format is dear to make and asked for with every change of a board: made once for each zone. */
const formatOf = (timeZone: string, withSeconds: boolean): Intl.DateTimeFormat => {
  const key = `${timeZone} ${withSeconds}`;
  const format = formats.get(key) ?? makeFormat(timeZone, withSeconds);
  formats.set(key, format);
  return format;
};

/** Wall time in a time zone: "11:46", or "11:46:24" with seconds. A zone that is not known reads as UTC, and says so. */
export const wallTime = (ms: number, timeZone: string, withSeconds = false): string => {
  try {
    return formatOf(timeZone, withSeconds).format(ms);
  } catch (cause) {
    if (!(cause instanceof RangeError)) throw cause;
    return `${formatOf("UTC", withSeconds).format(ms)} UTC`;
  }
};
