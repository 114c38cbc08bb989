import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { makeAuthority, makeServerCertificate } from "./make-certificates.ts";
import { readOwnCertificate } from "./own-certificate.ts";

const NOW = Date.now();
const DAY_MS = 86_400_000;
const NAMES = { dns: ["courts.example"], ips: ["192.168.1.7"] };

let folder: string;
let files: { certFile: string; keyFile: string };
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "courtloom-own-"));
  files = { certFile: join(folder, "fullchain.pem"), keyFile: join(folder, "key.pem") };
  const authority = await makeAuthority("courts-mini", NOW);
  const pair = await makeServerCertificate(authority, NAMES, NOW);
  writeFileSync(files.certFile, pair.cert + authority.cert);
  writeFileSync(files.keyFile, pair.key);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const said = (host = "courts.example", nowMs = NOW): string => {
  const read = readOwnCertificate(files, host, nowMs);
  return read.ok ? "good" : read.error;
};

describe("a certificate of one's own", () => {
  it("[ST31] is read with what stands above it", () => {
    const read = readOwnCertificate(files, "courts.example", NOW);
    expect(read.ok && read.value.cert.match(/BEGIN CERTIFICATE/g)).toHaveLength(2);
    expect(said("[192.168.1.7]")).toBe("good");
  });

  it("[ST31] is refused with a sentence when it does not fit", async () => {
    expect(said("other.example")).toContain("is not for other.example, the host of PUBLIC_URL");
    expect(said("192.168.1.8")).toContain("is not for 192.168.1.8");
    expect(said("courts.example", NOW + 400 * DAY_MS)).toMatch(/TLS_CERT ended on .* Put a new one there/);
    const stranger = await makeAuthority("court-2", NOW);
    writeFileSync(files.keyFile, stranger.key);
    expect(said()).toContain("the key is not the certificate's");
    writeFileSync(files.keyFile, "");
    expect(said()).toContain("there is no private key in it");
    rmSync(files.keyFile);
    expect(said()).toMatch(/TLS_KEY is ".*key\.pem", which cannot be read \(ENOENT\)/);
    rmSync(files.certFile);
    expect(said()).toContain("TLS_CERT is");
  });
});
