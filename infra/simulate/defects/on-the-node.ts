import { ok } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";
import { DOWN } from "@courtloom/protocol";
import type { Defect } from "../defect.ts";
import type { LogStore, Peer } from "../live-core.ts";
import { createLooseLog } from "./loose-log.ts";

type Append = Parameters<LogStore["append"]>[0];

const entriesOf = ({ items }: Append) => items.flatMap((item) => ("entry" in item ? [item.entry] : []));

/** What the log will most likely make of a batch, told without asking whether it did. */
const foretell = async (store: LogStore, append: Append): Promise<readonly LoggedEntry[] | undefined> => {
  const head = await store.head(append);
  if (!head.ok) return undefined;
  const { pos, epoch } = head.value;
  const { laneId } = append;
  return entriesOf(append).map((entry, i) => ({ pos: pos + i + 1, laneId, epoch, entry }));
};

const ackBeforeCommit: Defect = {
  name: "acknowledged before committed",
  says: "a batch is answered at once and written 300 ms later",
  node: ({ pause }) => ({
    store: (store) => ({
      ...store,
      append: async (append) => {
        const logged = await foretell(store, append);
        if (logged === undefined) return store.append(append);
        void pause(300).then(() => store.append(append));
        const upTo = append.items.at(-1)?.n ?? 0;
        return ok({ kind: "appended", upTo, head: logged.at(-1)?.pos ?? 0, logged });
      },
    }),
  }),
};

const publishBeforeCommit: Defect = {
  name: "published before committed",
  says: "readers are sent a batch while it is being written",
  node: () => {
    const peers = new Set<Peer>();
    return {
      peer: (peer) => {
        peers.add(peer);
        return peer;
      },
      store: (store) => ({
        ...store,
        append: async (append) => {
          const [entries, incarnation] = [await foretell(store, append), await store.incarnation()];
          if (entries && incarnation.ok) {
            const message = { matchId: append.matchId, incarnation: incarnation.value, entries };
            for (const { viewer } of peers) viewer.send(DOWN.courtEntries, message);
          }
          return store.append(append);
        },
      }),
    };
  },
};

const rememberedInMemory: Defect = {
  name: "de-duplication in memory only",
  says: "what was taken is remembered by the process, not by the log",
  database: (store, lab) => createLooseLog(store, { takesAgain: true }, lab),
  node: () => ({
    store: (store) => {
      const taken = new Set<string>();
      return {
        ...store,
        append: async (append) => {
          const items = append.items.filter(({ n }) => !taken.has(`${append.laneId}/${n}`));
          const appended = await store.append({ ...append, items });
          if (!appended.ok) return appended;
          for (const { n } of items) taken.add(`${append.laneId}/${n}`);
          return ok({ ...appended.value, upTo: append.items.at(-1)?.n ?? 0 });
        },
      };
    },
  }),
};

const incarnationIgnored: Defect = {
  name: "incarnation ignored",
  says: "a node goes on with the log it read first, whatever the store says",
  node: () => ({
    store: (store) => {
      let first: string | undefined;
      return {
        ...store,
        incarnation: async () => {
          const now = await store.incarnation();
          if (now.ok) first ??= now.value;
          return now.ok ? ok(first ?? now.value) : now;
        },
        openLane: async (open) => {
          const opened = await store.openLane(open);
          return opened.ok ? ok({ ...opened.value, incarnation: first ?? opened.value.incarnation }) : opened;
        },
      };
    },
  }),
};

const hintsTrusted: Defect = {
  name: "hints trusted",
  says: "heads are not read again; a lost hint is not made good",
  node: () => ({ store: (store) => ({ ...store, heads: async () => ok({ heads: [], next: "" }) }) }),
};

const outageTakenForYes: Defect = {
  name: "outage taken for success",
  says: "an append that the database did not answer is answered as done",
  node: () => ({
    store: (store) => ({
      ...store,
      append: async (append) => {
        const appended = await store.append(append);
        if (appended.ok || appended.error.code !== "unavailable") return appended;
        return ok({ kind: "duplicate", upTo: append.items.at(-1)?.n ?? 0, head: 0, logged: [] });
      },
    }),
  }),
};

const noticesInMemory: Defect = {
  name: "notices remembered by the process",
  says: "whom an alert was told to is known to the process alone, not to the ledger",
  node: () => ({
    alerts: (alerts) => {
      const told = new Set<string>();
      return {
        ...alerts,
        claimNotices: async ({ recipient, alerts: due }) => {
          const fresh = due.filter((key) => !told.has(`${recipient} ${JSON.stringify(key)}`));
          for (const key of fresh) told.add(`${recipient} ${JSON.stringify(key)}`);
          return ok(fresh);
        },
      };
    },
  }),
};

/** What a server process does wrong between its sockets and the log. */
export const ON_THE_NODE: readonly Defect[] = [
  ackBeforeCommit,
  publishBeforeCommit,
  rememberedInMemory,
  incarnationIgnored,
  hintsTrusted,
  outageTakenForYes,
  noticesInMemory,
];
