import { X509Certificate } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { err, ok, type Result } from "@courtloom/core";
import { type KeyPair, parsePair } from "./key-pair.ts";
import { makeAuthority } from "./make-certificates.ts";
import { readPrivate, writePair } from "./pair-file.ts";

export interface Authority {
  readonly pair: KeyPair;
  /** The certificate alone, for phones to fetch; the key is in no file that is handed on. */
  readonly certificateFile: string;
  /** SHA-256 in hex with colons, to compare by eye. */
  readonly fingerprint: string;
}

const MAKE_ANOTHER = "or remove it; then another one is made, and every phone has to trust that one";

/** What is wrong with an authority that is there, to follow the file's name. */
const faultOf = (cert: string, nowMs: number): string | undefined => {
  const certificate = new X509Certificate(cert);
  if (!certificate.ca) return "is damaged: its certificate is not an authority's";
  if (certificate.validToDate.getTime() <= nowMs) return `ended on ${certificate.validToDate.toDateString()}`;
  return undefined;
};

/**
 * The local certificate authority, made once and kept: `tls/authority.pem` in the data folder holds key and
 * certificate, readable by its owner alone. A damaged or ended one is a sentence, never replaced.
 */
export const keepAuthority = async (
  dataDir: string,
  hostName: string,
  nowMs: number,
): Promise<Result<Authority, string>> => {
  const folder = join(dataDir, "tls");
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const file = join(folder, "authority.pem");
  const text = readPrivate(file);
  const found = text === undefined ? undefined : parsePair(text);
  if (found && !found.ok) {
    return err(`${file} is damaged: ${found.error}. Put it back from a backup, ${MAKE_ANOTHER}.`);
  }
  const pair = found?.value ?? (await makeAuthority(hostName, nowMs));
  const fault = faultOf(pair.cert, nowMs);
  if (fault) return err(`${file} ${fault}. Put it back from a backup, ${MAKE_ANOTHER}.`);
  if (!found) writePair(file, pair);
  const certificateFile = join(folder, "authority.crt");
  writeFileSync(certificateFile, pair.cert);
  return ok({ pair, certificateFile, fingerprint: new X509Certificate(pair.cert).fingerprint256 });
};
