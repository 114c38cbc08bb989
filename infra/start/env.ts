import { resolve } from "node:path";
import { err, ok, type Result } from "@courtloom/core";
import type { CertificateFiles } from "./tls/own-certificate.ts";
import { type IsTrusted, parseTrustedProxies, trustsNobody } from "./trusted-proxies.ts";

/** The settings of a start, checked. Nothing else in the supervisor reads the environment. */
export interface StartEnv {
  readonly port: number;
  /** Where the front door ends TLS, if it does. */
  readonly httpsPort: number;
  /** Address to listen on; `undefined` for all, so that phones on the same network get in. */
  readonly host: string | undefined;
  /** Absolute. */
  readonly dataDir: string;
  /** A Postgres of one's own, as its owner; `undefined` for the private one. */
  readonly databaseUrl: string | undefined;
  /** Address that people use when something in front ends TLS, without a slash at the end. */
  readonly publicUrl: string | undefined;
  /** A certificate of one's own; `undefined` to have none, or the local authority's. */
  readonly certificateFiles: CertificateFiles | undefined;
  /** Which proxies in front are believed about their visitors. */
  readonly isTrustedProxy: IsTrusted;
  /** Shared by several nodes; `undefined` for one kept in the data folder. */
  readonly secret: string | undefined;
  /** The environment that children may inherit: without the owner's database address. */
  readonly inherited: Readonly<Record<string, string>>;
}

const DEFAULT_PORT = 3000;
const DEFAULT_HTTPS_PORT = 3443;
const SECRET_MIN = 32;
/** The owner's way into the database, also as its client library would find it. */
const OWNERS = ["DATABASE_URL", "PGPASSWORD", "PGUSER", "PGHOST", "PGPORT", "PGDATABASE", "PGSERVICE"];
/** The parts need no certificate: the front door ends TLS. Whether there is an authority is for the supervisor to say. */
const NOT_INHERITED = [...OWNERS, "TLS_CERT", "TLS_KEY", "AUTHORITY_FILE"];

/** Reads the settings; every fault is a sentence that says what to do. Empty means not set. */
export function readEnv(
  source: Readonly<Record<string, string | undefined>>,
  root: string,
): Result<StartEnv, readonly string[]> {
  const get = (name: string): string | undefined => source[name]?.trim() || undefined;
  const trusted = parseTrustedProxies(get("TRUSTED_PROXY") ?? "");
  const faults = [
    portFault("PORT", get("PORT"), DEFAULT_PORT),
    portFault("HTTPS_PORT", get("HTTPS_PORT"), DEFAULT_HTTPS_PORT),
    samePortFault(get("PORT"), get("HTTPS_PORT")),
    urlFault("DATABASE_URL", get("DATABASE_URL"), ["postgres:", "postgresql:"]),
    urlFault("PUBLIC_URL", get("PUBLIC_URL"), ["http:", "https:"]),
    certificateFault(get("TLS_CERT"), get("TLS_KEY"), get("PUBLIC_URL")),
    proxyFault(trusted),
    secretFault(get("COURTLOOM_SECRET")),
  ].filter((fault) => fault !== undefined);
  if (faults.length > 0) return err(faults);
  const port = Number(get("PORT") ?? DEFAULT_PORT);
  const freeHttpsPort = port === DEFAULT_HTTPS_PORT ? port + 1 : DEFAULT_HTTPS_PORT;
  return ok({
    port,
    httpsPort: Number(get("HTTPS_PORT") ?? freeHttpsPort),
    host: get("HOST"),
    dataDir: resolve(root, get("DATA_DIR") ?? ".data"),
    databaseUrl: get("DATABASE_URL"),
    publicUrl: get("PUBLIC_URL")?.replace(/\/+$/, ""),
    certificateFiles: certificateFiles(root, get("TLS_CERT"), get("TLS_KEY")),
    isTrustedProxy: trusted.ok ? trusted.value : trustsNobody,
    secret: get("COURTLOOM_SECRET"),
    inherited: inheritedFrom(source),
  });
}

function inheritedFrom(source: Readonly<Record<string, string | undefined>>): Record<string, string> {
  const kept: Record<string, string> = {};
  for (const [name, value] of Object.entries(source)) {
    if (value !== undefined && !NOT_INHERITED.includes(name)) kept[name] = value;
  }
  return kept;
}

function portFault(name: string, value: string | undefined, preset: number): string | undefined {
  if (value === undefined) return undefined;
  const port = Number(value);
  if (/^\d+$/.test(value) && port >= 1 && port <= 65_535) return undefined;
  return `${name} is "${value}"; it has to be a number from 1 to 65535, for instance ${name}=${preset + 1}.`;
}

function samePortFault(port: string | undefined, httpsPort: string | undefined): string | undefined {
  if (httpsPort === undefined || Number(httpsPort) !== Number(port ?? DEFAULT_PORT)) return undefined;
  return `PORT and HTTPS_PORT are both ${httpsPort}. Give one of them another number.`;
}

function certificateFiles(
  root: string,
  cert: string | undefined,
  key: string | undefined,
): CertificateFiles | undefined {
  if (cert === undefined || key === undefined) return undefined;
  return { certFile: resolve(root, cert), keyFile: resolve(root, key) };
}

function certificateFault(
  cert: string | undefined,
  key: string | undefined,
  publicUrl: string | undefined,
): string | undefined {
  if (cert === undefined && key === undefined) return undefined;
  if (cert === undefined || key === undefined) {
    const [there, missing] = cert === undefined ? ["TLS_KEY", "TLS_CERT"] : ["TLS_CERT", "TLS_KEY"];
    return `${there} is set and ${missing} is not. Set both, to the files of certificate and key, or neither.`;
  }
  if (publicUrl?.startsWith("https:")) return undefined;
  return "TLS_CERT and TLS_KEY are set: say with PUBLIC_URL which address the certificate is for, for instance PUBLIC_URL=https://courts.example.";
}

function proxyFault(trusted: Result<IsTrusted, string>): string | undefined {
  if (trusted.ok) return undefined;
  return `TRUSTED_PROXY holds "${trusted.error}", which is neither an address nor a range. Give the proxy's addresses with commas between, for instance TRUSTED_PROXY=127.0.0.1,10.0.0.0/8.`;
}

function urlFault(name: string, value: string | undefined, protocols: readonly string[]): string | undefined {
  if (value === undefined) return undefined;
  const protocol = URL.parse(value)?.protocol;
  if (protocol !== undefined && protocols.includes(protocol)) return undefined;
  return `${name} is not an address that begins with ${protocols.map((p) => `${p}//`).join(" or ")}. Mend it or leave it out.`;
}

function secretFault(value: string | undefined): string | undefined {
  if (value === undefined || value.length >= SECRET_MIN) return undefined;
  return `COURTLOOM_SECRET has ${value.length} characters and needs at least ${SECRET_MIN}. Make one with: openssl rand -hex 32`;
}
