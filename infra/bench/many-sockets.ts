import { once } from "node:events";
import { SOCKET_PATH } from "@courtloom/protocol";
import { io, type Socket } from "socket.io-client";

/** So many at once are let in: a club's phones do not come in the same millisecond either. */
const AT_ONCE = 20;

const connect = async (url: string, cookie: string): Promise<Socket> => {
  const socket = io(url, {
    path: SOCKET_PATH,
    addTrailingSlash: false,
    transports: ["websocket"],
    forceNew: true,
    extraHeaders: { cookie, origin: new URL(url).origin },
  });
  await once(socket as unknown as NodeJS.EventEmitter, "connect");
  return socket;
};

/** Connections to a Socket.IO server, all of them open. */
export const manySockets = async (url: string, cookie: string, count: number): Promise<readonly Socket[]> => {
  const sockets: Socket[] = [];
  while (sockets.length < count) {
    const group = Array.from({ length: Math.min(AT_ONCE, count - sockets.length) }, () =>
      connect(url, cookie),
    );
    sockets.push(...(await Promise.all(group)));
  }
  return sockets;
};
