import { createServer, type Server } from "node:http";
import { createServer as createTlsServer, type Server as TlsServer } from "node:https";
import { ok, type Result } from "@courtloom/core";
import { type Carrier, createCarrier, type RouteTo } from "./carry.ts";
import { type ListenError, type ListeningDoor, listenDoor } from "./door-server.ts";
import { createPlainDoor } from "./plain-door.ts";
import type { KeyPair } from "./tls/key-pair.ts";
import { type IsTrusted, trustsNobody } from "./trusted-proxies.ts";

export interface FrontDoor {
  /** Serves new connections with another certificate; does nothing on plain http. */
  readonly useCertificate: (pair: KeyPair) => void;
  /** Stops listening and cuts every connection. */
  readonly close: () => Promise<void>;
}

export interface DoorTls {
  readonly port: number;
  readonly pair: KeyPair;
  /** Origin for those who name no host. */
  readonly fallback: string;
  /** Whether phones fetch a local authority's certificate over plain http. */
  readonly servesTrust: boolean;
}

export interface FrontDoorOptions {
  readonly port: number;
  /** `undefined` for all addresses. */
  readonly host: string | undefined;
  readonly routeTo: RouteTo;
  readonly isTrustedProxy?: IsTrusted;
  /** Where set, `port` answers plain http with the way to https only. */
  readonly tls?: DoorTls | undefined;
}

const OLDEST_TLS = "TLSv1.2";

function carry<S extends Server | TlsServer>(server: S, carrier: Carrier): S {
  server.on("request", carrier.request);
  server.on("upgrade", carrier.upgrade);
  return server;
}

const plainDoorOf = ({ port, fallback, servesTrust }: DoorTls, carrier: Carrier): Server =>
  createPlainDoor({ carrier, httpsPort: port, fallback, servesTrust });

/** Opens what people use: `/rt` goes to `live`, everything else to `web`; over TLS, and plain http beside it, if asked. */
export async function openFrontDoor(options: FrontDoorOptions): Promise<Result<FrontDoor, ListenError>> {
  const { port, host, routeTo, tls, isTrustedProxy = trustsNobody } = options;
  const carrier = createCarrier(routeTo, isTrustedProxy);
  const secure = tls && carry(createTlsServer({ ...tls.pair, minVersion: OLDEST_TLS }), carrier);
  const plain = tls ? plainDoorOf(tls, carrier) : carry(createServer(), carrier);
  const open: ListeningDoor[] = [];
  const close = async (): Promise<void> => {
    await Promise.all(open.map((door) => door.close()));
    carrier.close();
  };
  const doors = [{ server: plain, at: port }, ...(secure ? [{ server: secure, at: tls.port }] : [])];
  for (const { server, at } of doors) {
    const listening = await listenDoor(server, at, host);
    if (!listening.ok) {
      await close();
      return listening;
    }
    open.push(listening.value);
  }
  return ok({
    close,
    useCertificate: (pair) => secure?.setSecureContext({ ...pair, minVersion: OLDEST_TLS }),
  });
}
