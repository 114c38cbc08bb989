import { ok, type Result } from "@courtloom/core";
import { type Database, UNAVAILABLE } from "./database.ts";
import type { LogStore } from "./live-core.ts";
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

/**
 * The match log as one process reaches it: each call takes time before and after its commit, and in
 * both the process or the database can end. A call whose commit happened may be answered `unavailable`.
 */
export const createNodeStore = ({ database, time, stream, asker }: NodeStoreOptions): LogStore => {
  const overWire = async <T, E>(
    ask: () => Promise<Result<T, E>>,
  ): Promise<Result<T, E> | typeof UNAVAILABLE> => {
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
