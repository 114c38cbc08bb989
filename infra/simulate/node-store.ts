import { ok, type Result } from "@courtloom/core";
import { type Database, UNAVAILABLE } from "./database.ts";
import type { AlertStore, LogStore } from "./live-core.ts";
import type { Stream } from "./stream.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** The process that asks: it can end at any step, and then no answer ever comes. */
export interface Asker {
  readonly isAlive: () => boolean;
  /** Called at each step of each call; may end the process. */
  readonly step: () => void;
}

interface NodeStoreOptions {
  readonly database: Database;
  readonly time: VirtualTime;
  readonly stream: Stream;
  readonly asker: Asker;
}

/** Never settles: who waited for it is gone. */
const never = <T>(): Promise<T> => new Promise<T>(() => undefined);

type OverWire = <T, E>(ask: () => Promise<Result<T, E>>) => Promise<Result<T, E> | typeof UNAVAILABLE>;

/**
 * A call to the database as one process makes it: each call takes time before and after its commit, and in
 * both the process or the database can end. A call whose commit happened may be answered `unavailable`.
 */
const wireTo =
  ({ database, time, stream, asker }: NodeStoreOptions): OverWire =>
  async (ask) => {
    await time.wait(stream.int(1, 6));
    if (asker.isAlive()) asker.step();
    if (!asker.isAlive()) return never();
    if (!database.isUp()) return UNAVAILABLE;
    const life = database.life();
    const answer = await ask();
    await time.wait(stream.int(1, 6));
    if (asker.isAlive()) asker.step();
    if (!asker.isAlive()) return never();
    return database.life() === life ? answer : UNAVAILABLE;
  };

/** The match log as one process reaches it. */
export const createNodeStore = (options: NodeStoreOptions): LogStore => {
  const { database, stream, asker } = options;
  const overWire = wireTo(options);
  const store = () => database.store();
  return {
    incarnation: () => overWire(() => store().incarnation()),
    openMatch: (open) => overWire(() => database.change(open.matchId, (log) => log.openMatch(open))),
    openLane: (open) => overWire(() => database.change(open.matchId, (log) => log.openLane(open))),
    lanes: (match) => overWire(() => store().lanes(match)),
    handOver: (ask) => overWire(() => store().handOver(ask)),
    append: (append) => overWire(() => database.change(append.matchId, (log) => log.append(append))),
    read: (read) => overWire(() => store().read(read)),
    head: (match) => overWire(() => store().head(match)),
    heads: (since) => overWire(() => store().heads(since)),
    recordHeard: (heard) => overWire(() => store().recordHeard(heard)),
    notify: (hint) => database.notify(hint, stream.int(1, 60)),
    listen: async (heard) => {
      const stop = database.listen((hint) => asker.isAlive() && heard(hint));
      return ok(async () => stop());
    },
  };
};

/** Alerts as one process reaches them. */
export const createNodeAlerts = (options: NodeStoreOptions): AlertStore => {
  const { database } = options;
  const overWire = wireTo(options);
  return {
    alertsOf: (match) => overWire(() => database.alerts().alertsOf(match)),
    dayAlerts: (day) => overWire(() => database.alerts().dayAlerts(day)),
    writeAlerts: (write) => overWire(() => database.changeAlerts((alerts) => alerts.writeAlerts(write))),
    claimNotices: (claim) => overWire(() => database.changeAlerts((alerts) => alerts.claimNotices(claim))),
    addMark: (mark) => overWire(() => database.changeAlerts((alerts) => alerts.addMark(mark))),
  };
};
