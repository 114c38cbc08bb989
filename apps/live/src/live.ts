import { createAlertBook } from "./alerts/alert-book.ts";
import { createAlertDesk } from "./alerts/alert-desk.ts";
import type { AlertStore, MembersOf } from "./alerts/alert-store.ts";
import { every } from "./every.ts";
import { createLookUps, type PrincipalOf } from "./look-ups.ts";
import { createDirectory, type Directory } from "./rooms/directory.ts";
import { createHeadWatch } from "./rooms/head-watch.ts";
import { createHeardBook } from "./rooms/heard-book.ts";
import type { Runtime } from "./runtime.ts";
import { createSession, type Peer, type Session } from "./session.ts";
import type { DayStore, Hint, LogStore } from "./store.ts";

export interface LiveOptions {
  readonly runtime: Runtime;
  readonly store: LogStore;
  readonly days: DayStore;
  readonly alerts: AlertStore;
  readonly membersOf: MembersOf;
  readonly principalOf: PrincipalOf;
}

/** One node, without a transport: connections come in as peers. Time, store and sockets are all passed in. */
export interface Live {
  readonly connect: (peer: Peer) => Session;
  readonly directory: Directory;
  /** Stops the clocks of this node. Connections are the transport's to close. */
  readonly stop: () => Promise<void>;
}

const HEADS_EVERY_MS = 2_000;
const HEARD_EVERY_MS = 1_000;
const RECORD_EVERY_MS = 3_000;
const RECHECK_EVERY_MS = 1_000;
const EVICT_EVERY_MS = 30_000;
const LISTEN_AGAIN_MS = 5_000;

/** Follows the store's hints; while it cannot, the heads are read every two seconds all the same. */
const followHints = ({ runtime, store }: LiveOptions, heard: (hint: Hint) => void) => {
  let stopped = false;
  let cancel = (): void => undefined;
  let unlisten = async (): Promise<void> => undefined;
  const begin = async (): Promise<void> => {
    const listening = await store.listen(heard);
    if (!listening.ok) {
      if (!stopped) cancel = runtime.timers.after(LISTEN_AGAIN_MS, () => void begin());
      return;
    }
    unlisten = listening.value;
    if (stopped) await unlisten();
  };
  void begin();
  return async (): Promise<void> => {
    stopped = true;
    cancel();
    await unlisten();
  };
};

export const createLive = (options: LiveOptions): Live => {
  const { runtime, store, days } = options;
  const heard = createHeardBook(runtime.clock.wallMs());
  const book = createAlertBook(options.alerts, runtime);
  const directory = createDirectory({ runtime, store, days, heard, alerts: book });
  const headWatch = createHeadWatch({ runtime, store, heard, directory });
  const lookUps = createLookUps(runtime.clock, options.principalOf, days);
  const alerts = createAlertDesk({
    ...{ runtime, directory, book, store: options.alerts, logs: store },
    ...{ membersOf: options.membersOf, matchCard: lookUps.matchCard },
  });
  const sessions = new Set<Session>();

  const hinted = ({ matchId, pos }: Hint): void => {
    for (const room of directory.matchesCalled(matchId)) {
      if (pos <= room.pos()) continue;
      room
        .catchUp()
        .catch((error: unknown) =>
          runtime.log.fault("a match was not brought up to date", { matchId, pos, error }),
        );
    }
  };
  const recordHeard = async (): Promise<void> => {
    const spoken = heard.takeSpoken();
    if (spoken.length === 0) return;
    const recorded = await store.recordHeard(spoken);
    // Said again with the phones' next beats; the words themselves are still in the book.
    if (!recorded.ok) runtime.log.note("which phones were heard was not recorded", {});
  };
  const stops = [
    every(runtime, HEADS_EVERY_MS, "reading the heads", headWatch.tick),
    every(runtime, HEADS_EVERY_MS, "reading the alerts", alerts.tick),
    every(runtime, HEARD_EVERY_MS, "telling who was heard", () => {
      for (const board of directory.boardRooms()) board.sendHeard();
    }),
    every(runtime, RECORD_EVERY_MS, "recording who was heard", recordHeard),
    every(runtime, RECHECK_EVERY_MS, "looking up sessions", async () => {
      await Promise.all([...sessions].map((session) => session.recheck()));
    }),
    every(runtime, EVICT_EVERY_MS, "giving up idle rooms", () => {
      alerts.evict();
      directory.evict();
    }),
  ];
  const stopHints = followHints(options, hinted);

  return {
    directory,
    connect: (peer) => {
      const session = createSession(peer, { directory, alerts, heard, runtime, lookUps });
      sessions.add(session);
      return {
        ...session,
        close: () => {
          sessions.delete(session);
          session.close();
        },
      };
    },
    stop: async () => {
      for (const stop of stops) stop();
      await stopHints();
      await recordHeard();
    },
  };
};
