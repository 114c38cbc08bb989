import { X509Certificate } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { readEnv, type StartEnv } from "../env.ts";
import type { KeyPair } from "./key-pair.ts";
import { openTls, type TlsMachine } from "./open-tls.ts";

let dataDir: string;
const said: string[] = [];
const machine = { addresses: ["192.168.1.7"] };
const here: TlsMachine = {
  hostName: () => "courts-mini",
  addresses: () => machine.addresses,
  nowMs: Date.now,
};

beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), "courtloom-open-"));
  said.length = 0;
  machine.addresses = ["192.168.1.7"];
});
afterEach(() => {
  vi.useRealTimers();
  rmSync(dataDir, { recursive: true, force: true });
});

function env(source: Record<string, string> = {}): StartEnv {
  const read = readEnv({ DATA_DIR: dataDir, ...source }, "/srv");
  if (!read.ok) throw new Error(read.error.join());
  return read.value;
}
const open = async (source: Record<string, string> = {}) => {
  const opened = await openTls(env(source), (line) => said.push(line), here);
  if (!opened.ok) throw new Error(opened.error);
  return opened.value;
};

describe("openTls", () => {
  it("[ST23] [ST24] makes what is missing once, and says so", async () => {
    const first = await open();
    expect(said).toEqual(["Certificate of this machine made (none yet)."]);
    const again = await open();
    expect(said).toHaveLength(1);
    expect(again.pair).toEqual(first.pair);
    expect(again.authority).toEqual(first.authority);
  });

  it("[ST28] hands on a renewed certificate when the machine's addresses change, and no other", async () => {
    vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
    const tls = await open();
    const renewed: KeyPair[] = [];
    const stop = tls.watch((pair) => renewed.push(pair));
    await vi.advanceTimersByTimeAsync(180_000);
    expect(renewed).toEqual([]);
    machine.addresses = ["192.168.1.9"];
    await vi.advanceTimersByTimeAsync(60_000);
    await vi.waitFor(() => expect(renewed).toHaveLength(1));
    expect(new X509Certificate(renewed[0]?.cert ?? "").subjectAltName).toContain("192.168.1.9");
    expect(said.at(-1)).toBe("Certificate of this machine made (other names).");
    stop();
    machine.addresses = ["192.168.1.11"];
    await vi.advanceTimersByTimeAsync(600_000);
    expect(renewed).toHaveLength(1);
  });

  it("[ST28] tells a fault that comes while it runs once, and goes on with what was there", async () => {
    vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
    const local = await open();
    if (local.authority === undefined) throw new Error("no authority");
    const files = { TLS_CERT: join(dataDir, "tls/server.pem"), TLS_KEY: join(dataDir, "tls/server.pem") };
    const own = await open({ ...files, PUBLIC_URL: "https://courts-mini.local" });
    expect(own.authority).toBeUndefined();
    const renewed: KeyPair[] = [];
    own.watch((pair) => renewed.push(pair));
    rmSync(files.TLS_CERT);
    await vi.advanceTimersByTimeAsync(180_000);
    await vi.waitFor(() => expect(said.filter((line) => line.startsWith("TLS_CERT is"))).toHaveLength(1));
    expect(renewed).toEqual([]);
  });

  it("[ST23] refuses a PUBLIC_URL of plain http in a sentence", async () => {
    const opened = await openTls(env({ PUBLIC_URL: "http://courts.example" }), () => undefined, here);
    expect(opened).toMatchObject({ ok: false, error: expect.stringContaining("Leave PUBLIC_URL out") });
  });
});
