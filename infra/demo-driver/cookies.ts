import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const SECURE = "__Host-";

/** The same session under the name that the product gives its cookie now: over https it is another one. */
const renamed = (cookie: string, secure: boolean): string =>
  (secure ? SECURE : "") + (cookie.startsWith(SECURE) ? cookie.slice(SECURE.length) : cookie);

/**
 * The sessions of the demo's phones, kept in the data folder: a lane belongs to the session that opened it,
 * so a driver that starts again must come back as the same phones, also when https came or went in between.
 */
export const readCookies = (dataDir: string, secure: boolean): Map<string, string> => {
  try {
    const kept = JSON.parse(readFileSync(join(dataDir, "demo-phones.json"), "utf8")) as Record<
      string,
      string
    >;
    return new Map(Object.entries(kept).map(([court, cookie]) => [court, renamed(cookie, secure)]));
  } catch {
    // No file yet, or one that was cut off: the phones enter with their codes again.
    return new Map();
  }
};

export const writeCookies = (dataDir: string, cookies: ReadonlyMap<string, string>): void =>
  writeFileSync(join(dataDir, "demo-phones.json"), JSON.stringify(Object.fromEntries(cookies)), {
    mode: 0o600,
  });
