import { availableParallelism } from "node:os";
import { createAuth } from "@courtloom/auth";
import {
  createAlertStore,
  createAuthStore,
  createDayStore,
  createPostgresEntryStore,
  isUnavailable,
  openAccounts,
  openDb,
} from "@courtloom/db";
import { readLiveEnv } from "./env.ts";
import { fitInThread } from "./fit/fit-in-thread.ts";
import { createFitKeeper } from "./fit/fit-keeper.ts";
import { createLive } from "./live.ts";
import { createSocketServer } from "./transport/socket-server.ts";
import { daysOf } from "./wire/days-of.ts";
import { createPinoLog } from "./wire/pino-log.ts";
import { processClock, processTimers } from "./wire/process-runtime.ts";
import { createWatchFreezer } from "./wire/watch-freezer.ts";

const env = readLiveEnv();
const log = createPinoLog(env.instanceId, process.stdout);
const runtime = { clock: processClock, timers: processTimers, log, isOutage: isUnavailable };

/** A match's start waits so long for its watches; phones wait 8 s for the whole answer. */
const FREEZE_WITHIN_MS = 5_000;
/** A morning's matches begin together; more threads than these would only wait most of the day. */
const MOST_THREADS = 2;

const freezer = createWatchFreezer({
  timers: processTimers,
  threads: Math.min(MOST_THREADS, Math.max(1, availableParallelism() - 1)),
  waitMs: FREEZE_WITHIN_MS,
});
const db = openDb(env.appDatabaseUrl);
const accounts = openAccounts(env.authDatabaseUrl);
const store = createPostgresEntryStore(db, { log: (line) => log.note(line, {}) });
const auth = createAuth({
  accounts,
  store: createAuthStore(db),
  secret: env.secret,
  secureCookies: env.secureCookies,
  clock: runtime.clock,
});
const dayStore = createDayStore(db);
const fits = createFitKeeper({ days: dayStore, runtime, fit: fitInThread });
const live = createLive({
  runtime,
  store,
  days: daysOf(dayStore, { freezer, log, fits }),
  alerts: createAlertStore(db),
  membersOf: dayStore.listMembers,
  principalOf: auth.principalOf,
});
const server = createSocketServer({
  live,
  runtime,
  principalOf: auth.principalOf,
  instanceId: env.instanceId,
  isWell: async () => (await store.incarnation()).ok,
});

/** Lets go of the port first, so that phones go on with the next process at once, and then of the rest. */
const stop = async (): Promise<void> => {
  await server.close();
  await live.stop();
  fits.stop();
  await Promise.all([freezer.close(), db.close(), accounts.close()]);
  process.exit(0);
};

let stopping = false;
for (const signal of ["SIGTERM", "SIGINT"] as const) {
  process.on(signal, () => {
    if (stopping) return;
    stopping = true;
    stop().catch((error: unknown) => {
      log.fault("stopping failed", { error });
      process.exit(1);
    });
  });
}
// A rejection that nobody waited for ended one piece of work; the courts go on, and somebody must look.
process.on("unhandledRejection", (error) => log.fault("a rejection was not handled", { error }));
// After an exception nothing is known of the state: the supervisor starts a new process, phones send again.
process.on("uncaughtException", (error) => {
  log.fault("an exception was not handled", { error });
  process.exit(1);
});

const port = await server.listen(env.port);
log.note(`live server listens on port ${port}`, {});
