import { Agent, createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { Socket } from "node:net";
import type { Duplex } from "node:stream";
import { err, ok, type Result } from "@courtloom/core";
import { createProxyServer } from "httpxy";
import { setForwarded } from "./forwarded.ts";
import { WAITING_PAGE } from "./waiting-page.ts";

export interface FrontDoor {
  /** Stops listening and cuts every connection. */
  readonly close: () => Promise<void>;
}

/** Loopback port of the part that a path belongs to; `undefined` while that part is down. */
export type RouteTo = (part: "web" | "live") => number | undefined;

export interface ListenError {
  readonly code: string;
  readonly message: string;
}

const LIVE_PATH = /^\/rt(?:[/?]|$)/;
const RETRY_AFTER_S = 2;

export const partFor = (url: string | undefined): "web" | "live" =>
  LIVE_PATH.test(url ?? "") ? "live" : "web";

/** Opens the one port that people use: `/rt` goes to `live`, everything else to `web`. */
export async function openFrontDoor(
  port: number,
  host: string | undefined,
  routeTo: RouteTo,
): Promise<Result<FrontDoor, ListenError>> {
  // A connection to a part on this machine costs nothing; a kept one may be closed by the part just as it is used again.
  const agent = new Agent({ keepAlive: false });
  const proxy = createProxyServer({ xfwd: false, agent });
  proxy.on("error", (_error, request, response) => answerBroken(request, response));
  const server = createServer((request, response) => {
    const target = targetOf(request, routeTo);
    if (target === undefined) return answerWaiting(request, response);
    // Its errors come by the event above; a rejection on top would tell nothing new.
    proxy.web(request, response, { target }).catch(() => answerBroken(request, response));
  });
  server.on("upgrade", (request, socket: Socket, head: Buffer) => {
    socket.on("error", () => socket.destroy());
    const target = partFor(request.url) === "live" ? targetOf(request, routeTo) : undefined;
    if (target === undefined) return refuseUpgrade(request, socket);
    proxy.ws(request, socket, { target }, head).catch(() => socket.destroy());
  });
  server.on("clientError", (_error, socket) => {
    if (socket.writable) socket.end("HTTP/1.1 400 Bad Request\r\nConnection: close\r\n\r\n");
    else socket.destroy();
  });
  const closeAll = trackConnections(server);
  const close = async (): Promise<void> => {
    const closed = new Promise<void>((resolve) => server.close(() => resolve()));
    closeAll();
    agent.destroy();
    await closed;
  };
  const listening = await listen(server, port, host);
  return listening.ok ? ok({ close }) : listening;
}

function listen(server: Server, port: number, host: string | undefined): Promise<Result<void, ListenError>> {
  return new Promise((resolve) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      resolve(err({ code: error.code ?? "unknown", message: error.message }));
    });
    server.listen(host === undefined ? { port } : { port, host }, () => resolve(ok(undefined)));
  });
}

function targetOf(request: IncomingMessage, routeTo: RouteTo): string | undefined {
  const port = routeTo(partFor(request.url));
  if (port === undefined) return undefined;
  const encrypted = "encrypted" in request.socket && request.socket.encrypted === true;
  setForwarded(request.headers, { address: request.socket.remoteAddress, encrypted });
  return `http://127.0.0.1:${port}`;
}

function answerWaiting(request: IncomingMessage, response: ServerResponse): void {
  const wantsPage = request.headers.accept?.includes("text/html") ?? false;
  response.writeHead(503, {
    "content-type": wantsPage ? "text/html; charset=utf-8" : "text/plain; charset=utf-8",
    "cache-control": "no-store",
    "retry-after": String(RETRY_AFTER_S),
  });
  response.end(wantsPage ? WAITING_PAGE : "Courtloom is starting. Try again in two seconds.\n");
  request.resume();
}

/** The part went away while it was answering. */
function answerBroken(request: IncomingMessage | undefined, response: unknown): void {
  if (response instanceof Socket) {
    response.destroy();
    return;
  }
  const answer = response as ServerResponse | undefined;
  if (request === undefined || answer === undefined || answer.headersSent) answer?.destroy();
  else answerWaiting(request, answer);
}

function refuseUpgrade(request: IncomingMessage, socket: Duplex): void {
  const status = partFor(request.url) === "live" ? "503 Service Unavailable" : "404 Not Found";
  socket.end(
    `HTTP/1.1 ${status}\r\nRetry-After: ${RETRY_AFTER_S}\r\nContent-Length: 0\r\nConnection: close\r\n\r\n`,
  );
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
