import { err } from "@courtloom/core";
import {
  type AlertStore,
  createMemoryAlertStore,
  createMemoryEntryStore,
  type EntryStore,
  type Hint,
} from "@courtloom/db";
import type { LoggedEntry } from "@courtloom/match-log";
import type { Defect } from "./defect.ts";
import type { Ledger } from "./ledger.ts";
import { MATCHES } from "./live-core.ts";
import type { Trace } from "./trace.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** One change of the log as it was made, so that an older state can be made again. */
interface Change {
  readonly atMs: number;
  readonly wallMs: number;
  readonly newIds: readonly string[];
  readonly make: (store: EntryStore) => Promise<unknown>;
}

interface AlertChange {
  readonly atMs: number;
  readonly make: (alerts: AlertStore) => Promise<unknown>;
}

/** The one database of a schedule: a disk that survives everything, and a server in front of it that does not. */
export interface Database {
  readonly store: () => EntryStore;
  readonly isUp: () => boolean;
  /** Counts the server's lives: a call that began in an earlier one has lost its answer. */
  readonly life: () => number;
  readonly incarnation: () => string;
  /** Makes a change and keeps it for restores. What it answers is committed. */
  readonly change: <T extends { readonly ok: boolean }>(
    matchId: string,
    make: (store: EntryStore) => Promise<T>,
  ) => Promise<T>;
  /** Alerts and whom they were told to, on the same disk. */
  readonly alerts: () => AlertStore;
  readonly changeAlerts: <T extends { readonly ok: boolean }>(
    make: (alerts: AlertStore) => Promise<T>,
  ) => Promise<T>;
  /** How often an older backup was put back. */
  readonly restores: () => number;
  readonly crash: () => Promise<void>;
  /** Goes away right after the next commit, before anybody is told of it. */
  readonly crashAfterCommit: () => void;
  readonly recover: () => void;
  /** Puts back the log as it stood `ageMs` ago, under another incarnation. */
  readonly restore: (ageMs: number) => Promise<void>;
  /** Ids of every entry that is on disk now. */
  readonly entryIds: () => Promise<ReadonlySet<string>>;
  readonly loseHints: (lost: boolean) => void;
  readonly notify: (hint: Hint, delayMs: number) => void;
  readonly listen: (heard: (hint: Hint) => void) => () => void;
}

export interface DatabaseOptions {
  readonly time: VirtualTime;
  readonly trace: Trace;
  readonly ledger: Ledger;
  readonly defect: Defect | undefined;
}

const WHOLE_LOG = 100_000;

const loggedIn = (answer: unknown): readonly LoggedEntry[] => {
  const { ok, value } = answer as { ok: boolean; value?: { logged?: readonly LoggedEntry[] } };
  if (!ok || value === undefined) return [];
  if ("opening" in value) return [value.opening as LoggedEntry];
  return value.logged ?? [];
};

export const createDatabase = ({ time, trace, ledger, defect }: DatabaseOptions): Database => {
  const clock = time.clock();
  const listeners = new Set<(hint: Hint) => void>();
  let changes: Change[] = [];
  let replayed: { readonly wallMs: number; readonly ids: string[] } | undefined;
  let madeIds: string[] = [];
  let idCount = 0;
  let incarnations = 1;
  let life = 1;
  let up = true;
  let hintsLost = false;
  let crashesAfterCommit = false;

  const newId = (): string => {
    const kept = replayed?.ids.shift();
    if (kept !== undefined) return kept;
    idCount += 1;
    const id = `00000000-0000-4000-9000-${String(idCount).padStart(12, "0")}`;
    madeIds.push(id);
    return id;
  };
  const lab = {
    pause: (ms: number) => (replayed ? Promise.resolve() : time.wait(ms)),
    isUp: () => replayed !== undefined || up,
  };
  const incarnation = (): string => `log-${incarnations}`;
  const createStore = (): EntryStore => {
    const store = createMemoryEntryStore({
      incarnation: incarnation(),
      newId,
      wallMs: () => replayed?.wallMs ?? clock.wallMs(),
    });
    for (const match of MATCHES) store.addMatch(match);
    return defect?.database ? defect.database(store, lab) : store;
  };
  let store = createStore();
  const createAlerts = (): AlertStore => {
    const made = createMemoryAlertStore();
    for (const match of MATCHES) made.addMatch(match);
    return made;
  };
  let alerts = createAlerts();
  let alertChanges: AlertChange[] = [];

  /** What the store wrote by itself when a lane was opened: that the lead was taken over, if it was. */
  const ownWriting = async (matchId: string, answer: unknown): Promise<readonly LoggedEntry[]> => {
    const { value } = answer as { value?: { epoch?: number; head?: number } };
    const match = MATCHES.find((each) => each.matchId === matchId);
    if (!match || value?.epoch === undefined || value.head === undefined) return [];
    const { academyId } = match;
    const page = await store.read({ academyId, matchId, after: value.head - 1, limit: WHOLE_LOG });
    return page.ok ? page.value.entries : [];
  };

  const putBack = async (untilMs: number): Promise<void> => {
    changes = changes.filter(({ atMs }) => atMs <= untilMs);
    store = createStore();
    for (const { wallMs, newIds, make } of changes) {
      replayed = { wallMs, ids: [...newIds] };
      await make(store);
    }
    replayed = undefined;
    alertChanges = alertChanges.filter(({ atMs }) => atMs <= untilMs);
    alerts = createAlerts();
    for (const { make } of alertChanges) await make(alerts);
  };
  const crash = async (): Promise<void> => {
    up = false;
    life += 1;
    trace.say("database", "goes away");
    if (defect?.forgetsMs !== undefined) await putBack(time.nowMs() - defect.forgetsMs);
  };
  return {
    store: () => store,
    isUp: () => up,
    life: () => life,
    incarnation,
    change: async (matchId, make) => {
      madeIds = [];
      const answering = make(store);
      const newIds = madeIds;
      const answer = await answering;
      if (!answer.ok) return answer;
      changes.push({ atMs: time.nowMs(), wallMs: clock.wallMs(), newIds, make });
      ledger.committed(matchId, [...loggedIn(answer), ...(await ownWriting(matchId, answer))]);
      if (crashesAfterCommit) {
        crashesAfterCommit = false;
        await crash();
      }
      return answer;
    },
    alerts: () => alerts,
    changeAlerts: async (make) => {
      const answer = await make(alerts);
      if (answer.ok) alertChanges.push({ atMs: time.nowMs(), make });
      return answer;
    },
    restores: () => incarnations - 1,
    crash,
    crashAfterCommit: () => {
      crashesAfterCommit = true;
    },
    recover: () => {
      up = true;
      crashesAfterCommit = false;
    },
    restore: async (ageMs) => {
      life += 1;
      if (!defect?.keepsIncarnation) incarnations += 1;
      await putBack(time.nowMs() - ageMs);
      trace.say("database", `restored as ${incarnation()} with ${changes.length} changes`);
    },
    entryIds: async () => {
      const ids = new Set<string>();
      for (const { academyId, matchId } of MATCHES) {
        const page = await store.read({ academyId, matchId, after: 0, limit: WHOLE_LOG });
        if (page.ok) for (const { entry } of page.value.entries) ids.add(entry.id);
      }
      return ids;
    },
    loseHints: (lost) => {
      hintsLost = lost;
    },
    notify: (hint, delayMs) => {
      if (!up || hintsLost) return;
      time.after(delayMs, () => {
        for (const listener of listeners) listener(hint);
      });
    },
    listen: (heard) => {
      listeners.add(heard);
      return () => void listeners.delete(heard);
    },
  };
};

export const UNAVAILABLE = err({ code: "unavailable" } as const);
