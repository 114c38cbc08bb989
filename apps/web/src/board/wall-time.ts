/** Wall time in a time zone: "11:46", or "11:46:24" with seconds. A zone that is not known reads as UTC, and says so. */
export const wallTime = (ms: number, timeZone: string, withSeconds = false): string => {
  const options: Intl.DateTimeFormatOptions = {
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    ...(withSeconds ? { second: "2-digit" } : {}),
  };
  try {
    return new Intl.DateTimeFormat("en-GB", { ...options, timeZone }).format(ms);
  } catch (cause) {
    if (!(cause instanceof RangeError)) throw cause;
    return `${new Intl.DateTimeFormat("en-GB", { ...options, timeZone: "UTC" }).format(ms)} UTC`;
  }
};
