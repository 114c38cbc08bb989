import type { MatchOpened } from "@courtloom/match-log";
import type { Database } from "./database.ts";
import type { Defect } from "./defect.ts";
import { hearNotices } from "./hear-notices.ts";
import type { Ledger } from "./ledger.ts";
import {
  createLive,
  createMatchDay,
  createSessions,
  type DayStore,
  type Live,
  membersOf,
  type Peer,
  type Runtime,
  type Session,
} from "./live-core.ts";
import { createNodeAlerts, createNodeStore } from "./node-store.ts";
import type { Stream } from "./stream.ts";
import type { Trace } from "./trace.ts";
import type { Verdict } from "./verdict.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** One server process that can end at any moment and start again with nothing in its memory. */
export interface ServerNode {
  readonly name: string;
  /** Undefined while the process is down. */
  readonly live: () => Live | undefined;
  /** Undefined when the process is down. */
  readonly connect: (peer: Peer) => Session | undefined;
  readonly start: () => void;
  readonly crash: () => void;
  /** Ends the process at the `steps`-th step of its calls to the database from now; 0 calls it off. */
  readonly crashAtStep: (steps: number) => void;
  readonly jumpClock: (byMs: number) => void;
  /** Counts the process's lives. */
  readonly life: () => number;
  readonly onCrash: (ended: () => void) => void;
}

export interface ServerNodeOptions {
  readonly name: string;
  readonly time: VirtualTime;
  readonly stream: Stream;
  readonly database: Database;
  readonly trace: Trace;
  readonly verdict: Verdict;
  readonly ledger: Ledger;
  /** Of every match that is opened. */
  readonly watches: MatchOpened["watches"];
  readonly defect: Defect | undefined;
}

class DatabaseIsAway extends Error {}

/** The day's tables: slow as the database is, and away with it. */
const overDatabase = (days: DayStore, { database, time, stream }: ServerNodeOptions): DayStore => {
  const ask = async <T>(question: () => Promise<T>): Promise<T> => {
    await time.wait(stream.int(1, 6));
    if (!database.isUp()) throw new DatabaseIsAway("the database is away");
    return question();
  };
  return {
    matchCard: (match) => ask(() => days.matchCard(match)),
    dayBoard: (day) => ask(() => days.dayBoard(day)),
    openingOf: (card) => ask(() => days.openingOf(card)),
    settle: (match, view) => ask(() => days.settle(match, view)),
  };
};

export const createServerNode = (options: ServerNodeOptions): ServerNode => {
  const { name, time, stream, database, trace, verdict, ledger, defect, watches } = options;
  const clock = time.clock();
  const days = createMatchDay({ head: (match) => database.store().head(match) });
  days.opening = { watches };
  const { principalOf } = createSessions();
  const crashed = new Set<() => void>();
  let live: Live | undefined;
  let life = 0;
  let stepsLeft = 0;
  let connectOf: (peer: Peer) => Session | undefined = () => undefined;

  const crash = (): void => {
    if (live === undefined) return;
    live = undefined;
    stepsLeft = 0;
    trace.say(name, "ends");
    for (const ended of crashed) ended();
  };
  const step = (): void => {
    if (stepsLeft === 0) return;
    stepsLeft -= 1;
    if (stepsLeft === 0) crash();
  };
  const start = (): void => {
    if (live !== undefined) return;
    life += 1;
    const mine = life;
    const isAlive = (): boolean => live !== undefined && life === mine;
    const runtime: Runtime = {
      clock,
      timers: { after: (ms, run) => time.after(ms, () => isAlive() && run()) },
      log: {
        fault: (what, { error }) => {
          if (isAlive()) verdict.broke("I8", `${name}: ${what}${error === undefined ? "" : `: ${error}`}`);
        },
        note: () => undefined,
      },
      isOutage: (error) => error instanceof DatabaseIsAway,
    };
    const lab = { pause: time.wait, isUp: database.isUp };
    const parts = defect?.node?.(lab) ?? {};
    const wires = { database, time, stream, asker: { isAlive, step } };
    const wired = createNodeStore(wires);
    const store = parts.store ? parts.store(wired) : wired;
    const wiredAlerts = createNodeAlerts(wires);
    const alerts = parts.alerts ? parts.alerts(wiredAlerts) : wiredAlerts;
    const tables = { days: overDatabase(days, options), alerts, membersOf };
    const started = createLive({ runtime, store, ...tables, principalOf });
    live = started;
    connectOf = (peer) =>
      hearNotices(peer, (heard) => started.connect(parts.peer ? parts.peer(heard) : heard), ledger);
    trace.say(name, `starts (life ${life})`);
  };
  return {
    name,
    live: () => live,
    connect: (peer) => (live === undefined ? undefined : connectOf(peer)),
    start,
    crash,
    crashAtStep: (steps) => {
      stepsLeft = steps;
    },
    jumpClock: clock.jump,
    life: () => life,
    onCrash: (ended) => void crashed.add(ended),
  };
};
