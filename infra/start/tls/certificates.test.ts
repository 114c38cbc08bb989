import { X509Certificate } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { type AddressInfo, isIP } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { connect, createServer } from "node:tls";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { certificateNames } from "./certificate-names.ts";
import { type Authority, keepAuthority } from "./keep-authority.ts";
import { keepServerCertificate } from "./keep-server-certificate.ts";
import type { KeyPair } from "./key-pair.ts";
import { makeAuthority, makeServerCertificate } from "./make-certificates.ts";

const DAY_MS = 86_400_000;
const NOW = Date.now();
const HOST = "courts-mini";
const names = certificateNames({
  hostName: HOST,
  addresses: ["192.168.1.7", "203.0.113.4", "fd00::7", "fe80::1"],
  publicHost: undefined,
});

let dataDir: string;
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), "courtloom-tls-"));
});
afterEach(() => rmSync(dataDir, { recursive: true, force: true }));

const file = (name: string): string => join(dataDir, "tls", name);
const authorityNow = async (nowMs = NOW, hostName = HOST): Promise<Authority> => {
  const kept = await keepAuthority(dataDir, hostName, nowMs);
  if (!kept.ok) throw new Error(kept.error);
  return kept.value;
};
const serverNow = (authority: Authority, nowMs = NOW, wished = names, hostName = HOST) =>
  keepServerCertificate(dataDir, authority, wished, hostName, nowMs);

/** What a client that knows `ca` alone says about a server with this certificate, asked by that name. */
async function shakeHands(pair: KeyPair, ca: string, servername: string): Promise<string> {
  const server = createServer({ ...pair }, (socket) => socket.end());
  server.on("tlsClientError", (_error, socket) => socket.destroy());
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const said = await new Promise<string>((resolve) => {
    const options = { host: "127.0.0.1", port, ca, ...(isIP(servername) === 0 ? { servername } : {}) };
    const socket = connect({
      ...options,
      checkServerIdentity: (_host, cert) => identity(servername, cert.raw),
    });
    socket.once("secureConnect", () => resolve("trusted"));
    socket.once("error", (error: NodeJS.ErrnoException) => resolve(error.message));
    socket.once("close", () => resolve("closed"));
  });
  await new Promise((resolve) => server.close(resolve));
  return said;
}

function identity(servername: string, raw: Buffer): Error | undefined {
  const certificate = new X509Certificate(raw);
  const fits = isIP(servername) === 0 ? certificate.checkHost(servername) : certificate.checkIP(servername);
  return fits === undefined ? new Error("other name") : undefined;
}

describe("the local authority", () => {
  it("[ST23] is for ten years and for signing alone, its key readable by its owner alone", async () => {
    const { pair, fingerprint, certificateFile } = await authorityNow();
    const certificate = new X509Certificate(pair.cert);
    expect(certificate.ca).toBe(true);
    expect(certificate.subject).toContain("Courtloom on courts-mini");
    const years = (certificate.validToDate.getTime() - NOW) / DAY_MS / 365.25;
    expect(years).toBeCloseTo(10, 1);
    expect(fingerprint).toBe(certificate.fingerprint256);
    expect(statSync(file("authority.pem")).mode & 0o777).toBe(0o600);
    expect(readFileSync(certificateFile, "utf8")).not.toContain("PRIVATE KEY");
    expect(readdirSync(join(dataDir, "tls")).sort()).toEqual(["authority.crt", "authority.pem"]);
  });

  it("[ST23] is kept over restarts, also under another machine's name", async () => {
    const first = await authorityNow();
    const again = await authorityNow(NOW + 900 * DAY_MS, "renamed-mini");
    expect(again.fingerprint).toBe(first.fingerprint);
    expect(again.pair).toEqual(first.pair);
  });

  it.each([
    ["no key in it", (text: string) => text.slice(text.indexOf("-----BEGIN CERT"))],
    ["half of it", (text: string) => text.slice(0, -200)],
    ["nothing in it", () => ""],
    ["bytes changed", (text: string) => text.replace(/MI[A-Za-z0-9]{8}/g, "AAAAAAAAAA")],
  ])("[ST23] says so when it is damaged (%s), and leaves it as it is", async (_what, damage) => {
    await authorityNow();
    const damaged = damage(readFileSync(file("authority.pem"), "utf8"));
    writeFileSync(file("authority.pem"), damaged);
    const kept = await keepAuthority(dataDir, HOST, NOW);
    expect(kept).toMatchObject({
      ok: false,
      error: expect.stringMatching(/authority\.pem is damaged: .*backup/),
    });
    expect(readFileSync(file("authority.pem"), "utf8")).toBe(damaged);
  });

  it("[ST23] says so when its key is another's, when it is none, and when it has ended", async () => {
    const one = await makeAuthority(HOST, NOW);
    const two = await makeAuthority(HOST, NOW);
    const leaf = await makeServerCertificate(one, names, NOW);
    await authorityNow();
    const said = async (text: string, nowMs = NOW): Promise<string> => {
      writeFileSync(file("authority.pem"), text);
      const kept = await keepAuthority(dataDir, HOST, nowMs);
      return kept.ok ? "good" : kept.error;
    };
    expect(await said(one.key + one.cert)).toBe("good");
    expect(await said(one.key + two.cert)).toContain("the key is not the certificate's");
    expect(await said(leaf.key + leaf.cert)).toContain("not an authority's");
    expect(await said(one.key + one.cert, NOW + 3660 * DAY_MS)).toMatch(/ended on .* remove it/);
  });
});

describe("the server's certificate", () => {
  it("[ST24] is trusted by who knows the authority, by every name of the machine", async () => {
    const authority = await authorityNow();
    const { pair } = await serverNow(authority);
    for (const name of ["localhost", HOST, `${HOST}.local`, "127.0.0.1", "::1", "192.168.1.7", "fd00::7"]) {
      expect([name, await shakeHands(pair, authority.pair.cert, name)]).toEqual([name, "trusted"]);
    }
    const stranger = await makeAuthority(HOST, NOW);
    expect(await shakeHands(pair, stranger.cert, "localhost")).toContain("unable to verify");
    expect(await shakeHands(pair, authority.pair.cert, "courts.example")).toBe("other name");
  });

  it("[ST24] ends within 397 days, and no later than its authority", async () => {
    const authority = await authorityNow();
    const days = (pair: KeyPair) => {
      const { validFromDate, validToDate } = new X509Certificate(pair.cert);
      return (validToDate.getTime() - validFromDate.getTime()) / DAY_MS;
    };
    expect(days((await serverNow(authority)).pair)).toBe(397);
    const late = await serverNow(authority, NOW + 3500 * DAY_MS);
    expect(new X509Certificate(late.pair.cert).validTo).toBe(
      new X509Certificate(authority.pair.cert).validTo,
    );
    expect(statSync(file("server.pem")).mode & 0o777).toBe(0o600);
  });

  it("[ST24] is kept while it is good, and made anew for a reason that is told", async () => {
    const authority = await authorityNow();
    const first = await serverNow(authority);
    expect(first.renewed).toBe("none yet");
    expect(await serverNow(authority, NOW + 365 * DAY_MS)).toEqual({ pair: first.pair, renewed: undefined });
    expect((await serverNow(authority, NOW + 367 * DAY_MS)).renewed).toBe("near its end");
    const moved = { ...names, ips: ["127.0.0.1", "::1", "10.0.0.9"] };
    expect((await serverNow(authority, NOW + 367 * DAY_MS, moved)).renewed).toBe("other names");
    writeFileSync(file("server.pem"), "-----BEGIN");
    expect((await serverNow(authority)).renewed).toBe("damaged");
    rmSync(file("authority.pem"));
    expect((await serverNow(await authorityNow())).renewed).toBe("another authority");
  });

  it("[ST24] leaves out a new host name that its authority may not vouch for", async () => {
    const authority = await authorityNow();
    const wished = certificateNames({ hostName: "court-9", addresses: [], publicHost: undefined });
    const { pair } = await serverNow(authority, NOW, wished, "court-9");
    expect(new X509Certificate(pair.cert).subjectAltName).not.toMatch(/DNS:court-9(,|$)/);
    expect(await shakeHands(pair, authority.pair.cert, "court-9.local")).toBe("trusted");
  });

  it.each([
    ["a public name", { dns: ["courts.example"], ips: [] }, "courts.example"],
    ["a public address", { dns: [], ips: ["203.0.113.4"] }, "203.0.113.4"],
    ["a public domain", { dns: ["com"], ips: [] }, "com"],
  ])("[ST25] is worth nothing for %s, whoever holds the authority's key", async (_what, forged, name) => {
    const authority = await makeAuthority(HOST, NOW);
    const pair = await makeServerCertificate(authority, forged, NOW);
    expect(await shakeHands(pair, authority.cert, name)).toBe("permitted subtree violation");
  });
});

describe("certificateNames", () => {
  it("[ST24] [ST25] names the machine and its private addresses, once and in order", () => {
    expect(names).toEqual({
      dns: ["courts-mini", "courts-mini.local", "localhost"],
      ips: ["127.0.0.1", "192.168.1.7", "::1", "fd00::7"],
    });
  });

  it.each([
    ["dev", ["dev.local", "localhost"]],
    ["Front-Desk.lan", ["front-desk", "front-desk.lan", "front-desk.local", "localhost"]],
    ["court7.club.example", ["court7", "court7.local", "localhost"]],
    ["xn--court-1", ["localhost", "xn--court-1.local"]],
    ["under_score", ["localhost"]],
    ["1234", ["1234.local", "localhost"]],
  ])("[ST25] takes of the host name %s what is private", (hostName, dns) => {
    expect(certificateNames({ hostName, addresses: [], publicHost: undefined }).dns).toEqual(dns);
  });

  it("[ST24] takes a private host of PUBLIC_URL", () => {
    const withHost = (publicHost: string) => certificateNames({ hostName: "x_", addresses: [], publicHost });
    expect(withHost("courts.home.arpa").dns).toContain("courts.home.arpa");
    expect(withHost("[fd00::9]").ips).toContain("fd00::9");
    expect(withHost("courts.example")).toEqual(withHost("localhost"));
  });
});
