import { hostname, networkInterfaces } from "node:os";
import { err, ok, type Result } from "@courtloom/core";
import type { StartEnv } from "../env.ts";
import type { Say } from "../say.ts";
import type { KeyPair } from "./key-pair.ts";

/** What the front door ends TLS with, and what phones need to trust it. */
export interface Tls {
  readonly pair: KeyPair;
  /** The local authority's certificate; `undefined` with a certificate of one's own. */
  readonly authority: { readonly certificateFile: string; readonly fingerprint: string } | undefined;
  /** Looks at the certificate every minute and hands a renewed one on; answers how to stop. */
  readonly watch: (onRenewed: (pair: KeyPair) => void) => () => void;
}

export interface TlsMachine {
  readonly hostName: () => string;
  readonly addresses: () => readonly string[];
  readonly nowMs: () => number;
}

const LOOK_EVERY_MS = 60_000;

const thisMachine: TlsMachine = {
  hostName: hostname,
  addresses: () =>
    Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter((entry) => !entry.internal)
      .map((entry) => entry.address),
  nowMs: Date.now,
};

type Look = () => Promise<Result<KeyPair, string>>;

/** A fault while it runs is told once; what was there goes on serving. */
const watchWith =
  (look: Look, first: KeyPair, tell: Say): Tls["watch"] =>
  (onRenewed) => {
    let last = first.cert;
    let told = "";
    const lookAgain = async (): Promise<void> => {
      const found = await look();
      const fault = found.ok ? "" : found.error;
      if (fault !== "" && fault !== told) tell(fault);
      told = fault;
      if (!found.ok || found.value.cert === last) return;
      last = found.value.cert;
      onRenewed(found.value);
    };
    const timer = setInterval(() => {
      lookAgain().catch((error: unknown) => tell(`The certificate could not be looked at: ${String(error)}`));
    }, LOOK_EVERY_MS);
    timer.unref();
    return () => clearInterval(timer);
  };

/** The authority and the server's certificate in the data folder. Errors are sentences. */
const openLocal = async (env: StartEnv, tell: Say, machine: TlsMachine): Promise<Result<Tls, string>> => {
  // Loaded only here: a start on plain http does not wait for it.
  const [{ keepAuthority }, { keepServerCertificate }, { certificateNames }] = await Promise.all([
    import("./keep-authority.ts"),
    import("./keep-server-certificate.ts"),
    import("./certificate-names.ts"),
  ]);
  if (env.publicUrl?.startsWith("http:")) {
    return err(
      `PUBLIC_URL is ${env.publicUrl}, and --https serves https only. Leave PUBLIC_URL out or write it with https.`,
    );
  }
  const publicHost = env.publicUrl === undefined ? undefined : new URL(env.publicUrl).hostname;
  const authority = await keepAuthority(env.dataDir, machine.hostName(), machine.nowMs());
  if (!authority.ok) return authority;
  const look = async (): Promise<Result<KeyPair, string>> => {
    const hostName = machine.hostName();
    const names = certificateNames({ hostName, addresses: machine.addresses(), publicHost });
    const kept = await keepServerCertificate(env.dataDir, authority.value, names, hostName, machine.nowMs());
    if (kept.renewed !== undefined) tell(`Certificate of this machine made (${kept.renewed}).`);
    return ok(kept.pair);
  };
  const first = await look();
  if (!first.ok) return first;
  const { certificateFile, fingerprint } = authority.value;
  return ok({
    pair: first.value,
    authority: { certificateFile, fingerprint },
    watch: watchWith(look, first.value, tell),
  });
};

const openOwn = async (env: StartEnv, tell: Say, machine: TlsMachine): Promise<Result<Tls, string>> => {
  const { readOwnCertificate } = await import("./own-certificate.ts");
  const { certificateFiles, publicUrl } = env;
  if (certificateFiles === undefined || publicUrl === undefined)
    throw new Error("bug: no certificate is set");
  const look = async () => readOwnCertificate(certificateFiles, new URL(publicUrl).hostname, machine.nowMs());
  const first = await look();
  if (!first.ok) return first;
  return ok({ pair: first.value, authority: undefined, watch: watchWith(look, first.value, tell) });
};

/** Reads or makes what TLS needs: TLS_CERT and TLS_KEY where they are set, else the local authority. */
export const openTls = (
  env: StartEnv,
  tell: Say,
  machine: TlsMachine = thisMachine,
): Promise<Result<Tls, string>> =>
  env.certificateFiles ? openOwn(env, tell, machine) : openLocal(env, tell, machine);
