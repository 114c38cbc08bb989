import type { Socket } from "socket.io";
import type { Live } from "../live.ts";
import { createOutlet } from "../outlet.ts";
import { refuse } from "../refuse.ts";
import type { Log } from "../runtime.ts";
import { speaksOf } from "./speaks-of.ts";

/** Questions since the connection was last free of unsent replies: those above this are put off. */
const MOST_WAITING_REPLIES = 100;
const PUT_OFF_MS = 1_000;

/** Ties a connected socket to a session. No handler throws; a message without an acknowledgement is ignored. */
export const attachSocket = (socket: Socket, live: Live, log: Log): void => {
  const { conn } = socket;
  const outlet = createOutlet({
    emit: (event, message) => socket.emit(event, message),
    isBehind: () => !conn.transport.writable,
  });
  const session = live.connect({
    cookieHeader: socket.handshake.headers.cookie,
    speaks: speaksOf(socket.handshake.auth),
    viewer: outlet,
    end: () => socket.disconnect(true),
  });
  let waitingReplies = 0;
  const ready = (): void => {
    waitingReplies = 0;
    outlet.flush();
  };
  conn.transport.on("ready", ready);
  const answer = async (event: string, args: readonly unknown[]): Promise<void> => {
    const ack = args.at(-1);
    if (typeof ack !== "function") return;
    waitingReplies += 1;
    if (waitingReplies > MOST_WAITING_REPLIES && !conn.transport.writable)
      return ack(refuse("busy", PUT_OFF_MS));
    ack(args.length === 2 ? await session.receive(event, args[0]) : refuse("bad_shape"));
  };
  socket.onAny((event: unknown, ...args: unknown[]) => {
    answer(String(event), args).catch((error: unknown) => log.fault("a reply could not be sent", { error }));
  });
  // What the parser could not read ends the connection by itself; without a listener it would be printed.
  socket.on("error", (error: Error) => log.note("a socket sent what cannot be read", { error }));
  socket.on("disconnect", () => {
    conn.transport.off("ready", ready);
    session.close();
  });
};
