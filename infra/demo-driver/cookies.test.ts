import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readCookies, writeCookies } from "./cookies.ts";

let dataDir: string;
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), "courtloom-cookies-"));
});
afterEach(() => rmSync(dataDir, { recursive: true, force: true }));

describe("the sessions of the demo's phones", () => {
  it("[ST20] are kept, under the name that cookies have now", () => {
    writeCookies(dataDir, new Map([["court-1", "courtloom_courtside=abc"]]));
    expect(readCookies(dataDir, false).get("court-1")).toBe("courtloom_courtside=abc");
    const secure = readCookies(dataDir, true);
    expect(secure.get("court-1")).toBe("__Host-courtloom_courtside=abc");
    writeCookies(dataDir, secure);
    expect(readCookies(dataDir, true).get("court-1")).toBe("__Host-courtloom_courtside=abc");
    expect(readCookies(dataDir, false).get("court-1")).toBe("courtloom_courtside=abc");
  });

  it("[ST20] are none before the first start, or when their file was cut off", () => {
    expect(readCookies(dataDir, false).size).toBe(0);
    writeFileSync(join(dataDir, "demo-phones.json"), '{"court-1":');
    expect(readCookies(dataDir, false).size).toBe(0);
  });
});
