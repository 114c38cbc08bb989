import { describe, expect, it } from "vitest";
import { type Addresses, addressesFor, banner } from "./banner.ts";
import { readEnv, type StartEnv } from "./env.ts";

function env(source: Record<string, string>): StartEnv {
  const read = readEnv(source, "/srv");
  if (!read.ok) throw new Error(read.error.join());
  return read.value;
}

describe("addresses", () => {
  it("[ST21] gives phones the network's address", () => {
    expect(addressesFor(env({}), "192.168.1.7")).toEqual({
      here: "http://localhost:3000",
      network: "http://192.168.1.7:3000",
      best: "http://192.168.1.7:3000",
      all: ["http://192.168.1.7:3000", "http://localhost:3000", "http://127.0.0.1:3000"],
      trust: undefined,
    });
  });

  it("[ST21] knows of none when it listens to itself, or is on no network", () => {
    expect(addressesFor(env({ HOST: "127.0.0.1" }), "192.168.1.7").network).toBeUndefined();
    expect(addressesFor(env({}), undefined).best).toBe("http://localhost:3000");
  });

  it("[ST21] hands out PUBLIC_URL first", () => {
    const addresses = addressesFor(env({ PUBLIC_URL: "https://courts.example" }), "192.168.1.7");
    expect(addresses.best).toBe("https://courts.example");
    expect(addresses.all).toContain("http://192.168.1.7:3000");
  });

  it("[ST21] writes an IPv6 HOST in brackets", () => {
    expect(addressesFor(env({ HOST: "fd00::7" }), undefined).network).toBe("http://[fd00::7]:3000");
  });

  it("[ST27] are https with a certificate, and say where a phone begins to trust it", () => {
    const local = addressesFor(env({}), "192.168.1.7", "local authority");
    expect(local).toEqual({
      here: "https://localhost:3443",
      network: "https://192.168.1.7:3443",
      best: "https://192.168.1.7:3443",
      all: ["https://192.168.1.7:3443", "https://localhost:3443", "https://127.0.0.1:3443"],
      trust: "http://192.168.1.7:3000/trust",
    });
    const own = addressesFor(env({ PUBLIC_URL: "https://courts.example" }), "192.168.1.7", "own certificate");
    expect(own).toMatchObject({ best: "https://courts.example", trust: undefined });
  });

  it("[ST27] leave out the protocol's own port", () => {
    const standard = env({ PORT: "80", HTTPS_PORT: "443" });
    expect(addressesFor(standard, "192.168.1.7", "local authority")).toMatchObject({
      best: "https://192.168.1.7",
      trust: "http://192.168.1.7/trust",
    });
  });
});

describe("banner", () => {
  it("[ST21] prints a QR code only where others can come in", async () => {
    const print = (addresses: Addresses) => banner({ addresses, dataDir: "/srv/.data", isTerminal: false });
    const open = await print(addressesFor(env({}), "192.168.1.7"));
    expect(open).toContain("Courtloom is running: http://localhost:3000");
    expect(open).toContain("http://192.168.1.7:3000");
    expect(open).toMatch(/[█▀▄]{5}/);
    const closed = await print(addressesFor(env({ HOST: "127.0.0.1" }), undefined));
    expect(closed).not.toMatch(/[█▀▄]/);
    expect(closed).toContain("Ctrl-C");
  });

  it("[ST27] prints a second code for the page of trust, and the fingerprint to compare", async () => {
    const addresses = addressesFor(env({}), "192.168.1.7", "local authority");
    const text = await banner({ addresses, dataDir: "/srv/.data", isTerminal: false, fingerprint: "AB:CD" });
    const [code, trustCode] = text.split(/begins here: http:\/\/192\.168\.1\.7:3000\/trust/);
    expect(code).toContain("On phones on the same network: https://192.168.1.7:3443");
    for (const part of [code, trustCode]) expect(part).toMatch(/[█▀▄]{5}/);
    expect(trustCode).toContain("AB:CD");
  });
});
