import "server-only";
import { X509Certificate } from "node:crypto";
import { readFile } from "node:fs/promises";
import { readTrustEnv } from "../../../env.ts";

/** The local authority, as a page tells of it. */
export interface AuthorityNote {
  /** As devices list it, such as "Courtloom on courts-mini". */
  readonly name: string;
  /** SHA-256, pairs of hex digits with colons between. */
  readonly fingerprint: string;
  /** Year, month, day. */
  readonly until: string;
  readonly pem: string;
  readonly httpsPort: number;
}

const NAME = /^CN=(.+)$/m;

/** Undefined where this Courtloom has no local authority. Rejects if the certificate cannot be read. */
export const readAuthority = async (): Promise<AuthorityNote | undefined> => {
  const trust = readTrustEnv();
  if (trust === undefined) return undefined;
  const pem = await readFile(trust.certificateFile, "utf8");
  const certificate = new X509Certificate(pem);
  return {
    name: NAME.exec(certificate.subject)?.[1] ?? "Courtloom",
    fingerprint: certificate.fingerprint256,
    until: certificate.validToDate.toISOString().slice(0, 10),
    pem,
    httpsPort: trust.httpsPort,
  };
};
