import { networkInterfaces } from "node:os";
import QRCode from "qrcode";
import type { StartEnv } from "./env.ts";

/** Addresses under which the product can be opened. */
export interface Addresses {
  /** On this machine. */
  readonly here: string;
  /** For phones on the same network; `undefined` if the machine is on none, or listens to itself only. */
  readonly network: string | undefined;
  /** The one to hand out: PUBLIC_URL, else the network's, else this machine's. */
  readonly best: string;
  /** Every origin that requests may come from. */
  readonly all: readonly string[];
}

const LOOPBACK = ["127.0.0.1", "localhost", "::1"];

export function addressesFor(env: StartEnv, lan: string | undefined): Addresses {
  const here = `http://localhost:${env.port}`;
  const network = networkAddress(env, lan);
  const best = env.publicUrl ?? network ?? here;
  const all = [best, network, here, `http://127.0.0.1:${env.port}`].filter((url) => url !== undefined);
  return { here, network, best, all: [...new Set(all)] };
}

function networkAddress(env: StartEnv, lan: string | undefined): string | undefined {
  if (env.host !== undefined && LOOPBACK.includes(env.host)) return undefined;
  const named = env.host !== undefined && env.host !== "0.0.0.0" && env.host !== "::" ? env.host : undefined;
  const address = named ?? lan;
  if (address === undefined) return undefined;
  return `http://${address.includes(":") ? `[${address}]` : address}:${env.port}`;
}

/** The first IPv4 address of this machine that others on its network can reach; home networks' ranges first. */
export function lanAddress(): string | undefined {
  const all = Object.values(networkInterfaces()).flatMap((list) => list ?? []);
  const outward = all.filter((entry) => entry.family === "IPv4" && !entry.internal);
  const home = outward.find((entry) => entry.address.startsWith("192.168."));
  return (home ?? outward[0])?.address;
}

/** What is printed once everything runs. */
export async function banner(addresses: Addresses, dataDir: string, isTerminal: boolean): Promise<string> {
  const lines = ["", `Courtloom is running: ${addresses.here}`];
  if (addresses.best !== addresses.here) {
    const where =
      addresses.best === addresses.network ? "On phones on the same network" : "For everybody else";
    lines.push(`${where}: ${addresses.best}`, "", await qr(addresses.best, isTerminal));
  }
  lines.push(`Data and logs are in ${dataDir}. Stop with Ctrl-C.`, "");
  return lines.join("\n");
}

/** In a terminal with its own black and white, so that a dark theme does not turn it inside out. */
function qr(url: string, isTerminal: boolean): Promise<string> {
  return isTerminal
    ? QRCode.toString(url, { type: "terminal", small: true })
    : QRCode.toString(url, { type: "utf8" });
}
