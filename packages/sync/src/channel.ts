import type { Refusal } from "@courtloom/protocol";
import { SOCKET_PATH } from "@courtloom/protocol/names";
import { io } from "socket.io-client";

export type ChannelState = "connecting" | "open" | "lost";

/** The one way of browser code to the live server. Nothing here rejects: a silent server is a refusal that may be retried. */
export interface Channel {
  /** Sends a message and waits for its acknowledgement, `unavailable` after the time limit or when not connected. */
  readonly request: <Reply>(event: string, message: unknown) => Promise<Reply | Refusal>;
  /** Listens; returns how to stop. */
  readonly on: (event: string, handler: (message: unknown) => void) => () => void;
  readonly state: () => ChannelState;
  readonly onState: (handler: (state: ChannelState) => void) => () => void;
  readonly close: () => void;
}

const ANSWER_WITHIN_MS = 8_000;
const UNAVAILABLE: Refusal = { ok: false, code: "unavailable", retry: true };

export interface ChannelOptions {
  /** Default: the server that served the page. */
  readonly url?: string;
  /** Where a device holds an account and a court's code, the code speaks. Default: the account. */
  readonly as?: "courtside";
}

/** Connects by WebSocket only, and goes on trying for ever. */
export const createChannel = ({ url, as }: ChannelOptions = {}): Channel => {
  const socket = io(url ?? "/", {
    ...(as ? { auth: { as } } : {}),
    path: SOCKET_PATH,
    addTrailingSlash: false,
    transports: ["websocket"],
    reconnectionDelay: 500,
    reconnectionDelayMax: 5_000,
    timeout: 5_000,
  });
  let state: ChannelState = "connecting";
  const stateHandlers = new Set<(state: ChannelState) => void>();
  const become = (next: ChannelState) => {
    if (next === state) return;
    state = next;
    for (const handler of stateHandlers) handler(next);
  };
  socket.on("connect", () => become("open"));
  socket.on("disconnect", (reason) => {
    become("lost");
    // A disconnect by the server ends the client's own reconnecting (it re-authenticates by itself, once).
    if (reason === "io server disconnect") socket.connect();
  });
  socket.on("connect_error", () => become("lost"));

  return {
    request: async <Reply>(event: string, message: unknown): Promise<Reply | Refusal> => {
      if (!socket.connected) return UNAVAILABLE;
      try {
        return (await socket.timeout(ANSWER_WITHIN_MS).emitWithAck(event, message)) as Reply;
      } catch {
        // emitWithAck rejects only when time ran out or the socket closed: both mean "not known to have arrived".
        return UNAVAILABLE;
      }
    },
    on: (event, handler) => {
      socket.on(event, handler);
      return () => socket.off(event, handler);
    },
    state: () => state,
    onState: (handler) => {
      stateHandlers.add(handler);
      return () => stateHandlers.delete(handler);
    },
    close: () => socket.close(),
  };
};
