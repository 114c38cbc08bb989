import { err, ok, type Result } from "@courtloom/core";
import type { Addresses } from "./banner.ts";
import type { RouteTo } from "./carry.ts";
import type { StartEnv } from "./env.ts";
import { openFrontDoor } from "./front-door.ts";
import { listenSentence } from "./listen-sentence.ts";
import type { Tls } from "./tls/open-tls.ts";

export interface DoorOptions {
  readonly env: StartEnv;
  readonly addresses: Addresses;
  readonly tls: Tls | undefined;
  readonly routeTo: RouteTo;
}

export interface OpenDoor {
  readonly close: () => Promise<void>;
}

/** Opens the front door as the settings ask, and keeps its certificate fresh. The error is a sentence. */
export async function openDoor(options: DoorOptions): Promise<Result<OpenDoor, string>> {
  const { env, addresses, tls, routeTo } = options;
  const door = await openFrontDoor({
    port: env.port,
    host: env.host,
    routeTo,
    isTrustedProxy: env.isTrustedProxy,
    tls: tls && {
      port: env.httpsPort,
      pair: tls.pair,
      fallback: new URL(addresses.best).origin,
      servesTrust: tls.authority !== undefined,
    },
  });
  if (!door.ok) return err(listenSentence(door.error, env));
  const stopWatching = tls?.watch(door.value.useCertificate);
  return ok({
    close: async () => {
      stopWatching?.();
      await door.value.close();
    },
  });
}
