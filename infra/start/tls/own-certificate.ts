import { X509Certificate } from "node:crypto";
import { readFileSync } from "node:fs";
import { isIP } from "node:net";
import { err, ok, type Result } from "@courtloom/core";
import { type KeyPair, parsePair } from "./key-pair.ts";

/** Where a certificate of one's own is. */
export interface CertificateFiles {
  readonly certFile: string;
  readonly keyFile: string;
}

const read = (name: string, file: string): Result<string, string> => {
  try {
    return ok(readFileSync(file, "utf8"));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return err(
      `${name} is "${file}", which cannot be read (${code ?? String(error)}). Mend the path or the rights.`,
    );
  }
};

/** A certificate from a public or an academy's own authority; what is wrong with it, or with its host, is a sentence. */
export const readOwnCertificate = (
  { certFile, keyFile }: CertificateFiles,
  publicHost: string,
  nowMs: number,
): Result<KeyPair, string> => {
  const cert = read("TLS_CERT", certFile);
  if (!cert.ok) return cert;
  const key = read("TLS_KEY", keyFile);
  if (!key.ok) return key;
  const pair = parsePair(`${key.value}\n${cert.value}`);
  if (!pair.ok)
    return err(`TLS_CERT and TLS_KEY do not work: ${pair.error}. Both have to be PEM, without a password.`);
  const certificate = new X509Certificate(pair.value.cert);
  if (certificate.validToDate.getTime() <= nowMs) {
    return err(
      `The certificate in TLS_CERT ended on ${certificate.validToDate.toDateString()}. Put a new one there.`,
    );
  }
  const host = publicHost.replace(/^\[|\]$/g, "");
  const isFor = isIP(host) === 0 ? certificate.checkHost(host) : certificate.checkIP(host);
  if (isFor === undefined) {
    return err(
      `The certificate in TLS_CERT is not for ${host}, the host of PUBLIC_URL. Mend one of the two.`,
    );
  }
  return pair;
};
