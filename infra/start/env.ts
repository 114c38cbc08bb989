import { resolve } from "node:path";
import { err, ok, type Result } from "@courtloom/core";

/** The settings of a start, checked. Nothing else in the supervisor reads the environment. */
export interface StartEnv {
  readonly port: number;
  /** Address to listen on; `undefined` for all, so that phones on the same network get in. */
  readonly host: string | undefined;
  /** Absolute. */
  readonly dataDir: string;
  /** A Postgres of one's own, as its owner; `undefined` for the private one. */
  readonly databaseUrl: string | undefined;
  /** Address that people use when something in front ends TLS, without a slash at the end. */
  readonly publicUrl: string | undefined;
  /** Shared by several nodes; `undefined` for one kept in the data folder. */
  readonly secret: string | undefined;
  /** The environment that children may inherit: without the owner's database address. */
  readonly inherited: Readonly<Record<string, string>>;
}

const DEFAULT_PORT = 3000;
const SECRET_MIN = 32;
/** The owner's way into the database, also as its client library would find it. */
const NOT_INHERITED = ["DATABASE_URL", "PGPASSWORD", "PGUSER", "PGHOST", "PGPORT", "PGDATABASE", "PGSERVICE"];

/** Reads the settings; every fault is a sentence that says what to do. Empty means not set. */
export function readEnv(
  source: Readonly<Record<string, string | undefined>>,
  root: string,
): Result<StartEnv, readonly string[]> {
  const get = (name: string): string | undefined => source[name]?.trim() || undefined;
  const faults = [
    portFault(get("PORT")),
    urlFault("DATABASE_URL", get("DATABASE_URL"), ["postgres:", "postgresql:"]),
    urlFault("PUBLIC_URL", get("PUBLIC_URL"), ["http:", "https:"]),
    secretFault(get("COURTLOOM_SECRET")),
  ].filter((fault) => fault !== undefined);
  if (faults.length > 0) return err(faults);
  return ok({
    port: Number(get("PORT") ?? DEFAULT_PORT),
    host: get("HOST"),
    dataDir: resolve(root, get("DATA_DIR") ?? ".data"),
    databaseUrl: get("DATABASE_URL"),
    publicUrl: get("PUBLIC_URL")?.replace(/\/+$/, ""),
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

function portFault(value: string | undefined): string | undefined {
  if (value === undefined) return undefined;
  const port = Number(value);
  if (/^\d+$/.test(value) && port >= 1 && port <= 65_535) return undefined;
  return `PORT is "${value}"; it has to be a number from 1 to 65535, for instance PORT=3001.`;
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
