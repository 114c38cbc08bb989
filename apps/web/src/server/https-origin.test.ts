import { describe, expect, it } from "vitest";
import { httpsOrigin } from "./https-origin.ts";

describe("https origin of the host that was asked", () => {
  it.each([
    ["192.168.1.7:3000", "https://192.168.1.7:3443"],
    ["courts-mini.local", "https://courts-mini.local:3443"],
    ["[fd00::7]:3000", "https://[fd00::7]:3443"],
    ["a.example; script-src *", undefined],
    ["a.example/x", undefined],
    ["me@a.example", undefined],
    ["", undefined],
  ])("[WB11] of %j is %s", (host, origin) => expect(httpsOrigin(host, 3443)).toBe(origin));

  it("[WB11] leaves out the port of https itself", () => {
    expect(httpsOrigin("courts.local", 443)).toBe("https://courts.local");
  });
});
