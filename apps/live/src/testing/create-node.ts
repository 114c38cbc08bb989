import {
  createMemoryAlertStore,
  createMemoryEntryStore,
  type MemoryAlertStore,
  type MemoryEntryStore,
} from "@courtloom/db";
import type { AlertStore } from "../alerts/alert-store.ts";
import { createLive, type Live } from "../live.ts";
import type { Speaks } from "../look-ups.ts";
import type { FaultFacts, Runtime } from "../runtime.ts";
import type { LogStore } from "../store.ts";
import { entryId } from "./entries.ts";
import { createFakeTime, type FakeTime } from "./fake-time.ts";
import { createMatchDay, MATCHES, type MatchDay } from "./match-day.ts";
import { type Cookie, createSessions, membersOf, type Sessions } from "./principals.ts";

export interface Told {
  readonly event: string;
  readonly message: unknown;
}

/** A connection without a network. */
export interface FakePeer {
  readonly ask: (event: string, payload: object) => Promise<Record<string, unknown>>;
  /** What was sent without being asked for, in order. */
  readonly told: Told[];
  readonly isEnded: () => boolean;
  readonly close: () => void;
}

export interface Node {
  readonly live: Live;
  readonly runtime: Runtime;
  readonly faults: { readonly what: string; readonly facts: FaultFacts }[];
  readonly connect: (person: Cookie | "nobody", speaks?: Speaks) => FakePeer;
}

export interface World {
  readonly time: FakeTime;
  readonly store: MemoryEntryStore;
  readonly alerts: MemoryAlertStore;
  readonly day: MatchDay;
  readonly sessions: Sessions;
  /** One more node over the same store; `over` replaces some of what it calls. */
  readonly addNode: (over?: Partial<LogStore>, alerts?: Partial<AlertStore>) => Node;
}

export const createMemoryStore = (wallMs: () => number, incarnation = "log-1"): MemoryEntryStore => {
  let made = 0;
  const store = createMemoryEntryStore({
    incarnation,
    wallMs,
    newId: () => {
      made += 1;
      return entryId(9_999, made);
    },
  });
  for (const match of MATCHES) store.addMatch(match);
  return store;
};

export const createMemoryAlerts = (): MemoryAlertStore => {
  const alerts = createMemoryAlertStore();
  for (const match of MATCHES) alerts.addMatch(match);
  return alerts;
};

/** The invented day, a store in memory and a clock that tests move. */
export const createWorld = (): World => {
  const time = createFakeTime();
  const store = createMemoryStore(time.clock.wallMs);
  const alerts = createMemoryAlerts();
  const day = createMatchDay(store);
  const sessions = createSessions();
  const addNode = (over: Partial<LogStore> = {}, overAlerts: Partial<AlertStore> = {}): Node => {
    const faults: { what: string; facts: FaultFacts }[] = [];
    const runtime: Runtime = {
      clock: time.clock,
      timers: time.timers,
      log: { fault: (what, facts) => void faults.push({ what, facts }), note: () => undefined },
      isOutage: () => day.away,
    };
    const live = createLive({
      runtime,
      store: { ...store, ...over },
      days: day,
      alerts: { ...alerts, ...overAlerts },
      membersOf,
      principalOf: sessions.principalOf,
    });
    const connect = (person: Cookie | "nobody", speaks: Speaks = "account"): FakePeer => {
      const told: Told[] = [];
      let ended = false;
      const session = live.connect({
        cookieHeader: person === "nobody" ? undefined : person,
        speaks,
        viewer: { send: (event, message) => void told.push({ event, message }) },
        end: () => {
          ended = true;
        },
      });
      return {
        told,
        ask: async (event, payload) => ({ ...(await session.receive(event, { v: 1, ...payload })) }),
        isEnded: () => ended,
        close: session.close,
      };
    };
    return { live, runtime, faults, connect };
  };
  return { time, store, alerts, day, sessions, addNode };
};
