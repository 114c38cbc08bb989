import {
  createServer,
  type Server as HttpServer,
  type IncomingMessage,
  type ServerResponse,
} from "node:http";
import { MAX_MESSAGE_BYTES, SOCKET_PATH } from "@courtloom/protocol";
import { Server } from "socket.io";
import type { Live } from "../live.ts";
import type { PrincipalOf } from "../look-ups.ts";
import type { Runtime } from "../runtime.ts";
import { admit } from "./admit.ts";
import { attachSocket } from "./attach-socket.ts";
import { createFailureLimit } from "./failure-limit.ts";

export interface SocketServerOptions {
  readonly live: Live;
  readonly runtime: Runtime;
  readonly principalOf: PrincipalOf;
  readonly instanceId: string;
  /** Whether what the server needs answers; asked for `/healthz`. */
  readonly isWell: () => Promise<boolean>;
}

export interface SocketServer {
  /** Listens on loopback only: the front door is what people reach. Answers the port; 0 takes a free one. */
  readonly listen: (port: number) => Promise<number>;
  /** Lets go of the port and closes every connection so that clients come back by themselves. */
  readonly close: () => Promise<void>;
}

const HEARTBEAT_MS = 10_000;
const CONNECT_WITHIN_MS = 10_000;

const send = (response: ServerResponse, status: number, body: object): void => {
  response.writeHead(status, {
    "content-type": "application/json",
    "cache-control": "no-store",
    "x-content-type-options": "nosniff",
  });
  response.end(JSON.stringify(body));
};

/** The process is up as soon as it answers; `ok` says whether the database answers too. */
const answerHttp =
  ({ instanceId, isWell }: SocketServerOptions) =>
  async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    if (request.method !== "GET" || request.url !== "/healthz") return send(response, 404, { ok: false });
    send(response, 200, { instanceId, ok: await isWell() });
  };

const listenOn = (http: HttpServer, port: number): Promise<number> =>
  new Promise((resolve, reject) => {
    http.once("error", reject);
    http.listen(port, "127.0.0.1", () => {
      http.off("error", reject);
      const address = http.address();
      resolve(typeof address === "object" && address !== null ? address.port : port);
    });
  });

export const createSocketServer = (options: SocketServerOptions): SocketServer => {
  const { live, runtime, principalOf } = options;
  const { log } = runtime;
  const failures = createFailureLimit(runtime.clock);
  const respond = answerHttp(options);
  const http = createServer((request, response) => {
    respond(request, response).catch((error: unknown) => {
      log.fault("a request could not be answered", { error });
      response.destroy();
    });
  });
  const io = new Server(http, {
    path: SOCKET_PATH,
    addTrailingSlash: false,
    transports: ["websocket"],
    serveClient: false,
    maxHttpBufferSize: MAX_MESSAGE_BYTES,
    pingInterval: HEARTBEAT_MS,
    pingTimeout: HEARTBEAT_MS,
    connectTimeout: CONNECT_WITHIN_MS,
    allowRequest: (request, decide) => {
      admit(request, { principalOf, failures, log }).then(
        (admitted) => decide(admitted ? null : "not admitted", admitted),
        (error: unknown) => {
          log.fault("a handshake could not be judged", { error });
          decide("not admitted", false);
        },
      );
    },
  });
  io.on("connection", (socket) => attachSocket(socket, live, log));
  return {
    listen: (port) => listenOn(http, port),
    close: async () => {
      await io.close();
      http.closeAllConnections();
    },
  };
};
