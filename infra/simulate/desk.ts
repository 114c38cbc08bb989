import type { Database } from "./database.ts";
import { MATCHES } from "./live-core.ts";
import type { Stream } from "./stream.ts";
import type { Trace } from "./trace.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** Staff who correct a match from the desk: a second writer of its log that no node knows of. */
export interface Desk {
  /** So many corrections of one match, one after the other. */
  readonly correct: (matchId: string, times: number) => Promise<void>;
}

export interface DeskOptions {
  readonly time: VirtualTime;
  readonly stream: Stream;
  readonly database: Database;
  readonly trace: Trace;
}

export const createDesk = ({ time, stream, database, trace }: DeskOptions): Desk => {
  const correctOnce = async (academyId: string, matchId: string): Promise<void> => {
    if (!database.isUp()) return;
    const page = await database.store().read({ academyId, matchId, after: 1, limit: 500 });
    if (!page.ok || page.value.entries.length === 0) return;
    const { entry } = stream.pick(page.value.entries);
    const kind = stream.chance(0.7) ? "EntryVoided" : "EntryRestored";
    const written = await database.change(matchId, (log) =>
      log.appendDesk({ academyId, matchId, body: { kind, target: entry.id } }),
    );
    if (!written.ok) return;
    trace.say("desk", `${kind} in ${matchId} at pos ${written.value.head}`);
    database.notify({ matchId, pos: written.value.head }, stream.int(1, 60));
  };
  return {
    correct: async (matchId, times) => {
      const match = MATCHES.find((each) => each.matchId === matchId);
      if (match === undefined) return;
      for (let i = 0; i < times; i += 1) {
        await correctOnce(match.academyId, matchId);
        await time.wait(stream.int(20, 500));
      }
    },
  };
};
