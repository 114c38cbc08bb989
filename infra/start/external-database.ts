import { err, ok, type Result } from "@courtloom/core";
import { unsafeSettings } from "@courtloom/db/embedded";
import type { Say } from "./say.ts";

/** By the code that the driver or the server gives; `where` names host and database, never the password. */
const REASONS: Readonly<Record<string, string>> = {
  ECONNREFUSED: "nothing listens there. Is the server running, and are host and port right?",
  ENOTFOUND: "there is no such host. Check the name.",
  EAI_AGAIN: "the host's name cannot be looked up now. Check the name and the network.",
  CONNECT_TIMEOUT: "it does not answer. Check host, port and firewall.",
  ETIMEDOUT: "it does not answer. Check host, port and firewall.",
  "28P01": "user or password is wrong.",
  "28000":
    "it does not let this user in from here (pg_hba.conf), or wants encryption (add ?sslmode=require).",
  "3D000": "there is no database of that name. Make it with: createdb",
  "53300": "it has no connection left. Raise max_connections, or stop other programs.",
};

/** Checks that the Postgres of DATABASE_URL can be used; the error is a sentence for people. */
export async function checkExternalDatabase(url: string, tell: Say): Promise<Result<void, string>> {
  try {
    for (const unsafe of await unsafeSettings(url)) {
      tell(
        `Caution: the database runs with ${unsafe.setting} = ${unsafe.value}. A power cut there can lose points that phones believe are safe.`,
      );
    }
    return ok(undefined);
  } catch (error) {
    return err(`The database of DATABASE_URL (${placeOf(url)}) cannot be used: ${reasonFor(error)}`);
  }
}

export function reasonFor(error: unknown): string {
  const { code, message } = error as { code?: unknown; message?: unknown };
  return (typeof code === "string" ? REASONS[code] : undefined) ?? String(message || code || error);
}

export function placeOf(url: string): string {
  const parsed = URL.parse(url);
  return parsed === null ? "an address that cannot be read" : `${parsed.host}${parsed.pathname}`;
}
