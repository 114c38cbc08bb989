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
  /** The plain http page that says how a phone trusts this machine; `undefined` without an authority of its own. */
  readonly trust: string | undefined;
}

/** How the front door is reached: by plain http, by a certificate of one's own, or by the local authority's. */
export type Scheme = "http" | "own certificate" | "local authority";

const LOOPBACK = ["127.0.0.1", "localhost", "::1"];

export function addressesFor(env: StartEnv, lan: string | undefined, scheme: Scheme = "http"): Addresses {
  const at = (host: string): string =>
    scheme === "http" ? originOf("http", host, env.port) : originOf("https", host, env.httpsPort);
  const here = at("localhost");
  const reachable = networkHost(env, lan);
  const network = reachable === undefined ? undefined : at(reachable);
  const best = env.publicUrl ?? network ?? here;
  const all = [best, network, here, at("127.0.0.1")].filter((url) => url !== undefined);
  const trust =
    scheme === "local authority"
      ? `${originOf("http", reachable ?? "localhost", env.port)}/trust`
      : undefined;
  return { here, network, best, all: [...new Set(all)], trust };
}

/** As browsers write it: an IPv6 address in brackets, the protocol's own port left out. */
function originOf(protocol: "http" | "https", host: string, port: number): string {
  return new URL(`${protocol}://${host.includes(":") ? `[${host}]` : host}:${port}`).origin;
}

function networkHost(env: StartEnv, lan: string | undefined): string | undefined {
  if (env.host !== undefined && LOOPBACK.includes(env.host)) return undefined;
  const named = env.host !== undefined && env.host !== "0.0.0.0" && env.host !== "::" ? env.host : undefined;
  return named ?? lan;
}

/** The first IPv4 address of this machine that others on its network can reach; home networks' ranges first. */
export function lanAddress(): string | undefined {
  const all = Object.values(networkInterfaces()).flatMap((list) => list ?? []);
  const outward = all.filter((entry) => entry.family === "IPv4" && !entry.internal);
  const home = outward.find((entry) => entry.address.startsWith("192.168."));
  return (home ?? outward[0])?.address;
}

export interface BannerOptions {
  readonly addresses: Addresses;
  readonly dataDir: string;
  readonly isTerminal: boolean;
  /** Of the local authority's certificate, SHA-256. */
  readonly fingerprint?: string | undefined;
}

/** What is printed once everything runs. */
export async function banner(options: BannerOptions): Promise<string> {
  const { addresses, dataDir, isTerminal, fingerprint } = options;
  const lines = ["", `Courtloom is running: ${addresses.here}`];
  if (addresses.best !== addresses.here) {
    const where =
      addresses.best === addresses.network ? "On phones on the same network" : "For everybody else";
    lines.push(`${where}: ${addresses.best}`, "", await qr(addresses.best, isTerminal));
  }
  if (addresses.trust !== undefined && fingerprint !== undefined) {
    lines.push(`A phone that does not trust this machine yet begins here: ${addresses.trust}`, "");
    if (addresses.network !== undefined) lines.push(await qr(addresses.trust, isTerminal));
    lines.push("The certificate that it gets there has this SHA-256 fingerprint:", fingerprint, "");
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
