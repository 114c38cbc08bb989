import { describe, expect, it } from "vitest";
import { addressesFor, banner } from "./banner.ts";
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
});

describe("banner", () => {
  it("[ST21] prints a QR code only where others can come in", async () => {
    const open = await banner(addressesFor(env({}), "192.168.1.7"), "/srv/.data", false);
    expect(open).toContain("Courtloom is running: http://localhost:3000");
    expect(open).toContain("http://192.168.1.7:3000");
    expect(open).toMatch(/[█▀▄]{5}/);
    const closed = await banner(addressesFor(env({ HOST: "127.0.0.1" }), undefined), "/srv/.data", false);
    expect(closed).not.toMatch(/[█▀▄]/);
    expect(closed).toContain("Ctrl-C");
  });
});
