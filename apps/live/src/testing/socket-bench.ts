import { UP } from "@courtloom/protocol";
import { io, type Socket } from "socket.io-client";
import { createLive } from "../live.ts";
import type { FaultFacts, Runtime } from "../runtime.ts";
import type { LogStore } from "../store.ts";
import { createSocketServer } from "../transport/socket-server.ts";
import { processClock, processTimers } from "../wire/process-runtime.ts";
import { createMemoryAlerts, createMemoryStore } from "./create-node.ts";
import { createMatchDay } from "./match-day.ts";
import { type Cookie, createSessions, membersOf } from "./principals.ts";

export type Reply = Record<string, unknown>;

/** A real client. */
export interface Client {
  readonly socket: Socket;
  readonly ask: (event: string, payload: unknown) => Promise<Reply>;
  readonly told: { readonly event: string; readonly message: unknown }[];
  /** Waits until `enough` holds of what was told. */
  readonly until: (enough: (told: Client["told"]) => boolean) => Promise<void>;
}

const ANSWER_WITHIN_MS = 10_000;

const clientOf = (socket: Socket): Client => {
  const told: { event: string; message: unknown }[] = [];
  const waiting = new Set<() => void>();
  socket.onAny((event: string, message: unknown) => {
    told.push({ event, message });
    for (const look of waiting) look();
  });
  return {
    socket,
    told,
    ask: async (event, payload) =>
      (await socket.timeout(ANSWER_WITHIN_MS).emitWithAck(event, payload)) as Reply,
    until: (enough) =>
      new Promise((resolve) => {
        const look = (): void => {
          if (!enough(told)) return;
          waiting.delete(look);
          resolve();
        };
        waiting.add(look);
        look();
      }),
  };
};

/** A live server on a free port of this machine, over a store in memory, with clients that connect to it. */
export const createSocketBench = async (over: Partial<LogStore> = {}) => {
  const store = createMemoryStore(processClock.wallMs);
  const day = createMatchDay(store);
  const sessions = createSessions();
  const faults: { what: string; facts: FaultFacts }[] = [];
  const runtime: Runtime = {
    clock: processClock,
    timers: processTimers,
    log: { fault: (what, facts) => void faults.push({ what, facts }), note: () => undefined },
    isOutage: () => day.away,
  };
  const { principalOf } = sessions;
  const alerts = createMemoryAlerts();
  const live = createLive({
    ...{ runtime, store: { ...store, ...over }, days: day },
    ...{ alerts, membersOf, principalOf },
  });
  const server = createSocketServer({
    live,
    runtime,
    principalOf,
    instanceId: "this-start",
    isWell: async () => !day.away,
  });
  const port = await server.listen(0);
  const url = `http://127.0.0.1:${port}`;
  const sockets: Socket[] = [];
  const dial = (headers: Record<string, string>, words: object = {}): Socket => {
    const socket = io(url, {
      auth: words,
      path: "/rt",
      addTrailingSlash: false,
      transports: ["websocket"],
      forceNew: true,
      reconnectionDelay: 20,
      extraHeaders: headers,
    });
    sockets.push(socket);
    return socket;
  };
  const connect = async (person: Cookie | "nobody", words: object = {}): Promise<Client> => {
    const cookie: Record<string, string> = person === "nobody" ? {} : { cookie: person };
    // As if from an address of its own, so that a test of many strangers does not meet the limit on failures.
    const from = { "x-forwarded-for": `2001:db8::${sockets.length.toString(16)}` };
    const client = clientOf(dial({ origin: url, ...from, ...cookie }, words));
    await new Promise<void>((resolve) => client.socket.once("connect", resolve));
    return client;
  };
  /** True when let in. */
  const knock = (headers: Record<string, string>): Promise<boolean> =>
    new Promise((resolve) => {
      const socket = dial(headers);
      const tell = (admitted: boolean): void => {
        socket.disconnect();
        resolve(admitted);
      };
      socket.once("connect", () => tell(true));
      socket.once("connect_error", () => tell(false));
    });
  return {
    store,
    alerts,
    day,
    sessions,
    faults,
    live,
    server,
    url,
    connect,
    knock,
    close: async () => {
      for (const socket of sockets) socket.disconnect();
      await server.close();
      await live.stop();
    },
  };
};

export type SocketBench = Awaited<ReturnType<typeof createSocketBench>>;

/** A lane.open for a match and lane. */
export const openLane = (client: Client, matchId: string, laneId: string): Promise<Reply> =>
  client.ask(UP.laneOpen, { v: 1, matchId, laneId, level: "every" });
