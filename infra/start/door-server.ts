import type { Server } from "node:http";
import type { Socket } from "node:net";
import { err, ok, type Result } from "@courtloom/core";

export interface ListenError {
  readonly port: number;
  readonly code: string;
  readonly message: string;
}

export interface ListeningDoor {
  /** Stops listening and cuts every connection. */
  readonly close: () => Promise<void>;
}

/** Listens on one port of all addresses, or of one. The server may be one that ends TLS. */
export async function listenDoor(
  server: Server,
  port: number,
  host: string | undefined,
): Promise<Result<ListeningDoor, ListenError>> {
  server.on("clientError", (_error, socket) => {
    const isPlain = !("encrypted" in socket);
    if (isPlain && socket.writable) socket.end("HTTP/1.1 400 Bad Request\r\nConnection: close\r\n\r\n");
    else socket.destroy();
  });
  const closeAll = trackConnections(server);
  const listening = await listen(server, port, host);
  if (!listening.ok) return listening;
  return ok({
    close: async () => {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      closeAll();
      await closed;
    },
  });
}

function listen(server: Server, port: number, host: string | undefined): Promise<Result<void, ListenError>> {
  return new Promise((resolve) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      resolve(err({ port, code: error.code ?? "unknown", message: error.message }));
    });
    server.listen(host === undefined ? { port } : { port, host }, () => resolve(ok(undefined)));
  });
}

/** The server itself forgets a connection once it carries a WebSocket. */
function trackConnections(server: Server): () => void {
  const open = new Set<Socket>();
  server.on("connection", (socket) => {
    open.add(socket);
    socket.once("close", () => open.delete(socket));
  });
  return () => {
    for (const socket of open) socket.destroy();
  };
}
