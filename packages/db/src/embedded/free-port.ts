import { randomInt } from "node:crypto";
import { createServer } from "node:net";

/** Below the ports that systems hand to outgoing connections, so that none of those can be in the way later. */
const LOWEST = 20_000;
const HIGHEST = 32_000;
const TRIES = 100;

/** True if nothing listens on this loopback port now. */
export function isPortFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const server = createServer();
    server.once("error", () => resolve(false));
    server.listen({ port, host: "127.0.0.1", exclusive: true }, () => server.close(() => resolve(true)));
  });
}

/** A loopback port that is free now, picked at random from 20000 to 31999. */
export async function freePort(): Promise<number> {
  for (let attempt = 0; attempt < TRIES; attempt += 1) {
    const port = randomInt(LOWEST, HIGHEST);
    if (await isPortFree(port)) return port;
  }
  throw new Error(`no free port found between ${LOWEST} and ${HIGHEST} in ${TRIES} tries`);
}
