import { Agent, type IncomingMessage, type ServerResponse } from "node:http";
import { Socket } from "node:net";
import type { Duplex } from "node:stream";
import { createProxyServer } from "httpxy";
import { setForwarded } from "./forwarded.ts";
import type { IsTrusted } from "./trusted-proxies.ts";
import { WAITING_PAGE } from "./waiting-page.ts";

/** Loopback port of the part that a path belongs to; `undefined` while that part is down. */
export type RouteTo = (part: "web" | "live") => number | undefined;

/** Carries what comes in to the part that it belongs to. */
export interface Carrier {
  readonly request: (request: IncomingMessage, response: ServerResponse) => void;
  readonly upgrade: (request: IncomingMessage, socket: Duplex, head: Buffer) => void;
  readonly close: () => void;
}

const LIVE_PATH = /^\/rt(?:[/?]|$)/;
const RETRY_AFTER_S = 2;

export const partFor = (url: string | undefined): "web" | "live" =>
  LIVE_PATH.test(url ?? "") ? "live" : "web";

export function createCarrier(routeTo: RouteTo, isTrustedProxy: IsTrusted): Carrier {
  // A connection to a part on this machine costs nothing; a kept one may be closed by the part just as it is used again.
  const agent = new Agent({ keepAlive: false });
  const proxy = createProxyServer({ xfwd: false, agent });
  proxy.on("error", (_error, request, response) => answerBroken(request, response));
  const targetOf = (request: IncomingMessage): string | undefined => {
    const port = routeTo(partFor(request.url));
    if (port === undefined) return undefined;
    const encrypted = "encrypted" in request.socket && request.socket.encrypted === true;
    setForwarded(request.headers, { address: request.socket.remoteAddress, encrypted }, isTrustedProxy);
    return `http://127.0.0.1:${port}`;
  };
  return {
    request: (request, response) => {
      const target = targetOf(request);
      if (target === undefined) return answerWaiting(request, response);
      // Its errors come by the event above; a rejection on top would tell nothing new.
      proxy.web(request, response, { target }).catch(() => answerBroken(request, response));
    },
    upgrade: (request, socket, head) => {
      socket.on("error", () => socket.destroy());
      const isLive = partFor(request.url) === "live";
      const target = isLive ? targetOf(request) : undefined;
      if (target === undefined)
        return refuseUpgrade(socket, isLive ? "503 Service Unavailable" : "404 Not Found");
      proxy.ws(request, socket as Socket, { target }, head).catch(() => socket.destroy());
    },
    close: () => agent.destroy(),
  };
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

/** Ends an upgrade with a status line such as "404 Not Found". */
export function refuseUpgrade(socket: Duplex, status: string): void {
  const again = status.startsWith("503") ? `Retry-After: ${RETRY_AFTER_S}\r\n` : "";
  socket.end(`HTTP/1.1 ${status}\r\n${again}Content-Length: 0\r\nConnection: close\r\n\r\n`);
}
