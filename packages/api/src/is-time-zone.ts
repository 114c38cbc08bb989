/** Whether `name` is an IANA time zone that this server knows, such as `Europe/Lisbon`. Bare offsets are none. */
export const isTimeZone = (name: string): boolean => {
  if (!/^[A-Za-z][A-Za-z0-9_+/-]{1,63}$/.test(name)) return false;
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
};
