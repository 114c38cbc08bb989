import { join } from "node:path";
import type { CertificateNames } from "./certificate-names.ts";
import type { Authority } from "./keep-authority.ts";
import { type KeyPair, parsePair } from "./key-pair.ts";
import { makeServerCertificate } from "./make-certificates.ts";
import { isConstrainedTo, NAME_CONSTRAINTS } from "./name-constraints.ts";
import { readPrivate, writePair } from "./pair-file.ts";
import { bareName } from "./private-names.ts";
import { GeneralName, SubjectAlternativeNameExtension, X509Certificate } from "./x509.ts";

/** A certificate with less left is made anew. */
const RENEW_BEFORE_MS = 30 * 86_400_000;

/** Why a server certificate is not used any longer. */
export type RenewReason = "none yet" | "damaged" | "another authority" | "other names" | "near its end";

export interface KeptCertificate {
  readonly pair: KeyPair;
  /** Why it was made just now; `undefined` if it was there. */
  readonly renewed: RenewReason | undefined;
}

/** The machine may have another name than when its authority was made; then its bare name is not vouched for. */
const vouchedNames = (
  authority: X509Certificate,
  names: CertificateNames,
  hostName: string,
): CertificateNames => {
  if (isConstrainedTo(authority.getExtension(NAME_CONSTRAINTS), hostName)) return names;
  return { ...names, dns: names.dns.filter((name) => name !== bareName(hostName)) };
};

/** As the certificate writes them, so that two spellings of an address are one. */
const namesOf = (certificate: X509Certificate): string =>
  (certificate.getExtension(SubjectAlternativeNameExtension)?.names.items ?? [])
    .map((name) => Buffer.from(name.rawData).toString("hex"))
    .sort()
    .join();
const wishedNames = ({ dns, ips }: CertificateNames): string =>
  [...dns.map((name) => new GeneralName("dns", name)), ...ips.map((ip) => new GeneralName("ip", ip))]
    .map((name) => Buffer.from(name.rawData).toString("hex"))
    .sort()
    .join();

const reasonToRenew = async (
  pair: KeyPair,
  authority: X509Certificate,
  names: CertificateNames,
  nowMs: number,
): Promise<RenewReason | undefined> => {
  const certificate = new X509Certificate(pair.cert);
  const isSigned = await certificate.verify({ publicKey: authority, signatureOnly: true });
  if (!isSigned) return "another authority";
  if (namesOf(certificate) !== wishedNames(names)) return "other names";
  const renewAtMs = Math.min(certificate.notAfter.getTime(), authority.notAfter.getTime()) - RENEW_BEFORE_MS;
  return nowMs >= renewAtMs || nowMs < certificate.notBefore.getTime() ? "near its end" : undefined;
};

/**
 * The front door's certificate, in `tls/server.pem` of the data folder: kept while it is the authority's, for
 * these names and good for another 30 days; else made anew, which asks nothing of phones that trust the authority.
 */
export const keepServerCertificate = async (
  dataDir: string,
  authority: Authority,
  wished: CertificateNames,
  hostName: string,
  nowMs: number,
): Promise<KeptCertificate> => {
  const issuer = new X509Certificate(authority.pair.cert);
  const names = vouchedNames(issuer, wished, hostName);
  const file = join(dataDir, "tls", "server.pem");
  const text = readPrivate(file);
  const found = text === undefined ? undefined : parsePair(text);
  const reason = !found
    ? "none yet"
    : found.ok
      ? await reasonToRenew(found.value, issuer, names, nowMs)
      : "damaged";
  if (found?.ok && reason === undefined) return { pair: found.value, renewed: undefined };
  const pair = await makeServerCertificate(authority.pair, names, nowMs);
  writePair(file, pair);
  return { pair, renewed: reason };
};
