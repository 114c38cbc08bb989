const LONGEST_ADDRESS = 64;

/**
 * The visitor's network address as the front door wrote it; it drops what visitors claim themselves. With
 * another proxy in front the last entry is the one that our own side added. Empty when nothing is known.
 */
export const addressOf = (headers: Headers): string =>
  (headers.get("x-forwarded-for") ?? "").split(",").at(-1)?.trim().slice(0, LONGEST_ADDRESS) ?? "";
