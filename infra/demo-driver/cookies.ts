import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/**
 * The sessions of the demo's phones, kept in the data folder: a lane belongs to the session that opened it,
 * so a driver that starts again must come back as the same phones.
 */
export const readCookies = (dataDir: string): Map<string, string> => {
  try {
    const kept = JSON.parse(readFileSync(join(dataDir, "demo-phones.json"), "utf8")) as Record<
      string,
      string
    >;
    return new Map(Object.entries(kept));
  } catch {
    // No file yet, or one that was cut off: the phones enter with their codes again.
    return new Map();
  }
};

export const writeCookies = (dataDir: string, cookies: ReadonlyMap<string, string>): void =>
  writeFileSync(join(dataDir, "demo-phones.json"), JSON.stringify(Object.fromEntries(cookies)), {
    mode: 0o600,
  });
