import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { type Carrier, refuseUpgrade } from "./carry.ts";

/** The page that says how to trust this machine, the certificate, and the built files and the icon of that page. */
const PLAIN_PATH = /^\/(?:trust(?:[/?]|$)|_next\/static\/|icon\.svg(?:\?|$))/;
const HOST_NAME = /^(?:[A-Za-z0-9.-]+|\[[0-9a-f:.]+\])$/i;

export interface PlainDoorOptions {
  readonly carrier: Carrier;
  readonly httpsPort: number;
  /** Origin to send those to who named no host, such as `https://192.168.1.7:3443`. */
  readonly fallback: string;
  /** Whether there is a local authority that phones fetch here. */
  readonly servesTrust: boolean;
}

/** The https origin of the host that was asked over plain http. */
export function httpsOrigin(host: string | undefined, httpsPort: number, fallback: string): string {
  const name = host?.replace(/:\d{1,5}$/, "") ?? "";
  const url = HOST_NAME.test(name) ? URL.parse(`https://${name}:${httpsPort}`) : null;
  return url?.origin ?? fallback;
}

/**
 * Answers plain http beside a door that ends TLS: what a phone needs that does not trust it yet, and the way to
 * https for everything else. Not for good: a later start may be plain again.
 */
export function createPlainDoor({ carrier, httpsPort, fallback, servesTrust }: PlainDoorOptions): Server {
  const server = createServer((request: IncomingMessage, response: ServerResponse) => {
    const reads = request.method === "GET" || request.method === "HEAD";
    if (!reads) return refuse(request, response);
    if (servesTrust && PLAIN_PATH.test(request.url ?? "")) {
      // Nobody is signed in over plain http, whatever a browser kept from another day.
      delete request.headers.cookie;
      return carrier.request(request, response);
    }
    const path = request.url?.startsWith("/") ? request.url : "/";
    const location = `${httpsOrigin(request.headers.host, httpsPort, fallback)}${path}`;
    response.writeHead(307, { location, "cache-control": "no-store", "content-length": "0" });
    response.end();
  });
  server.on("upgrade", (_request, socket) => {
    socket.on("error", () => socket.destroy());
    refuseUpgrade(socket, "403 Forbidden");
  });
  return server;
}

function refuse(request: IncomingMessage, response: ServerResponse): void {
  response.writeHead(403, { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" });
  response.end("This address takes nothing over plain http. Open the https address.\n");
  request.resume();
}
