import type { Hint } from "../entry-store.ts";
import type { Db } from "../open-db.ts";

const CHANNEL = "courtloom_log";
/** The server takes payloads below 8,000 bytes. */
const HINTS_PER_PAYLOAD = 80;

/** Outside any transaction of a writer, in one statement. Never rejects: what a hint tells is read from the heads anyway. */
export async function sendHints(db: Db, hints: readonly Hint[], log: (line: string) => void): Promise<void> {
  const payloads: string[] = [];
  for (let i = 0; i < hints.length; i += HINTS_PER_PAYLOAD) {
    const part = hints.slice(i, i + HINTS_PER_PAYLOAD);
    payloads.push(part.map(({ matchId, pos }) => `${matchId}:${pos}`).join(" "));
  }
  try {
    await db.sql`select pg_notify(${CHANNEL}, payload) from unnest(${payloads}::text[]) as payload`;
  } catch (error) {
    log(`hints were not sent: ${String(error)}`);
  }
}

/** The driver keeps a connection for it and listens again by itself after it broke. */
export async function listenForHints(
  db: Db,
  heard: (hint: Hint) => void,
  log: (line: string) => void,
): Promise<() => Promise<void>> {
  const { unlisten } = await db.sql.listen(CHANNEL, (payload) => {
    for (const hint of parseHints(payload)) heard(hint);
  });
  return async () => {
    try {
      await unlisten();
    } catch (error) {
      log(`listening could not be ended: ${String(error)}`);
    }
  };
}

function parseHints(payload: string): readonly Hint[] {
  return payload.split(" ").flatMap((part) => {
    const [, matchId, pos] = /^([\w-]{1,64}):(\d{1,9})$/.exec(part) ?? [];
    return matchId && pos ? [{ matchId, pos: Number(pos) }] : [];
  });
}
