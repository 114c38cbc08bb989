import type { Clock } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import {
  BEAT_EVERY_MS,
  type LaneAppendReply,
  type LaneBeatReply,
  type LaneOpenReply,
  PROTOCOL_VERSION,
  SOCKET_PATH,
  UP,
} from "@courtloom/protocol";
import { io, type Socket } from "socket.io-client";

export interface PhoneOptions {
  /** The front door. */
  readonly url: string;
  readonly cookie: string;
  readonly matchId: string;
  readonly laneId: string;
  readonly clock: Clock;
}

/** A simulated phone: the same socket, cookie and messages as a real one. */
export interface Phone {
  /** The lane's cursor, once the server has opened it; a sentence when it never will. */
  readonly open: () => Promise<{ readonly cursor: number } | { readonly refused: string }>;
  /** Sends until the server has committed all of them. */
  readonly send: (entries: readonly Entry[]) => Promise<{ readonly refused: string } | undefined>;
  /** While silent, no beat goes out. */
  readonly setSilent: (silent: boolean) => void;
  readonly close: () => void;
}

const ANSWER_WITHIN_MS = 5_000;
const RETRY_MS = 1_000;

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Asks again and again: a server that is restarting is normal. */
const ask = async <Reply extends { readonly ok: boolean }>(
  socket: Socket,
  isClosed: () => boolean,
  event: string,
  message: unknown,
): Promise<Reply> => {
  for (;;) {
    if (isClosed()) throw new Error("the demo's phone was closed");
    try {
      const reply = (await socket.timeout(ANSWER_WITHIN_MS).emitWithAck(event, message)) as Reply & {
        readonly retry?: boolean;
      };
      if (reply.ok || !reply.retry) return reply;
    } catch {
      // Not answered in time: the server may be restarting; the same message again is harmless.
    }
    await wait(RETRY_MS);
  }
};

export const createPhone = ({ url, cookie, matchId, laneId, clock }: PhoneOptions): Phone => {
  const socket = io(url, {
    path: SOCKET_PATH,
    addTrailingSlash: false,
    transports: ["websocket"],
    reconnectionDelay: 500,
    reconnectionDelayMax: 3_000,
    extraHeaders: { cookie, origin: new URL(url).origin },
  });
  let closed = false;
  let silent = false;
  let incarnation = "";
  const base = { v: PROTOCOL_VERSION, matchId, laneId };
  // A server that was started again knows no lane: this one is opened again, so that what waits is taken.
  const beaten = (reply: LaneBeatReply) => {
    if (reply.ok || reply.code !== "unknown_lane" || incarnation === "") return;
    socket.emit(UP.laneOpen, { ...base, level: "every" }, () => undefined);
  };
  const beat = setInterval(() => {
    if (!silent && socket.connected) {
      socket.emit(UP.laneBeat, { ...base, unsent: 0, wallMs: clock.wallMs() }, beaten);
    }
  }, BEAT_EVERY_MS);

  const open: Phone["open"] = async () => {
    const reply = await ask<LaneOpenReply>(socket, () => closed, UP.laneOpen, { ...base, level: "every" });
    if (!reply.ok) return { refused: reply.code };
    incarnation = reply.incarnation;
    return { cursor: reply.cursor };
  };
  const send: Phone["send"] = async (entries) => {
    const reply = await ask<LaneAppendReply>(socket, () => closed, UP.laneAppend, {
      ...base,
      incarnation,
      entries,
    });
    return reply.ok ? undefined : { refused: reply.code };
  };
  return {
    open,
    send,
    setSilent: (next) => {
      silent = next;
    },
    close: () => {
      closed = true;
      clearInterval(beat);
      socket.close();
    },
  };
};
