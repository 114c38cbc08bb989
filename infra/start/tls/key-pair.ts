import { createPrivateKey, X509Certificate } from "node:crypto";
import { err, ok, type Result } from "@courtloom/core";

/** A private key and the certificate for it, as PEM. */
export interface KeyPair {
  readonly key: string;
  /** With the certificates above it, if any, after it. */
  readonly cert: string;
}

const KEY = /-----BEGIN (?:[A-Z]+ )?PRIVATE KEY-----[^-]+-----END (?:[A-Z]+ )?PRIVATE KEY-----/;
const CERTIFICATES = /-----BEGIN CERTIFICATE-----[^-]+-----END CERTIFICATE-----/g;

/** One file's text. */
export const formatPair = ({ key, cert }: KeyPair): string => `${key.trim()}\n${cert.trim()}\n`;

/** Reads key and certificates out of a text; the error is what is wrong with it, to follow "is damaged: ". */
export const parsePair = (text: string): Result<KeyPair, string> => {
  const key = KEY.exec(text)?.[0];
  const certs = text.match(CERTIFICATES);
  if (key === undefined) return err("there is no private key in it");
  if (certs === null) return err("there is no certificate in it");
  const pair = { key: `${key}\n`, cert: `${certs.join("\n")}\n` };
  try {
    const fits = new X509Certificate(pair.cert).checkPrivateKey(createPrivateKey(pair.key));
    return fits ? ok(pair) : err("the key is not the certificate's");
  } catch (error) {
    return err(`it cannot be read (${error instanceof Error ? error.message : String(error)})`);
  }
};
