import type { IncomingHttpHeaders } from "node:http";
import { describe, expect, it } from "vitest";
import { setForwarded } from "./forwarded.ts";
import { parseTrustedProxies } from "./trusted-proxies.ts";

const trusting = (text: string) => {
  const parsed = parseTrustedProxies(text);
  if (!parsed.ok) throw new Error(parsed.error);
  return parsed.value;
};
const claimed: IncomingHttpHeaders = {
  host: "courts.local:3000",
  cookie: "a=b",
  "x-forwarded-for": "198.51.100.9",
  "x-forwarded-proto": "https",
  "x-forwarded-host": "courts.example",
  "x-forwarded-prefix": "/x",
  forwarded: "for=10.0.0.1",
  "x-real-ip": "10.0.0.1",
};

describe("setForwarded", () => {
  it("[ST13] drops what a visitor claims and sets what is known", () => {
    const headers = { ...claimed };
    setForwarded(headers, { address: "::ffff:192.168.1.7", encrypted: false });
    expect(headers).toEqual({
      host: "courts.local:3000",
      cookie: "a=b",
      "x-forwarded-for": "192.168.1.7",
      "x-forwarded-proto": "http",
      "x-forwarded-host": "courts.local:3000",
    });
  });

  it("[ST29] believes a trusted proxy about address, protocol and host, and about nothing else", () => {
    const headers = { ...claimed };
    setForwarded(
      headers,
      { address: "::ffff:192.168.1.7", encrypted: false },
      trusting("10.0.0.1, 192.168.1.0/24"),
    );
    expect(headers).toEqual({
      host: "courts.example",
      cookie: "a=b",
      "x-forwarded-for": "198.51.100.9",
      "x-forwarded-proto": "https",
      "x-forwarded-host": "courts.example",
    });
  });

  it("[ST29] believes nobody else while a proxy is trusted", () => {
    const headers = { ...claimed };
    setForwarded(headers, { address: "192.168.2.7", encrypted: true }, trusting("192.168.1.0/24"));
    expect(headers).toMatchObject({
      host: "courts.local:3000",
      "x-forwarded-for": "192.168.2.7",
      "x-forwarded-proto": "https",
    });
  });

  const behind = (headers: IncomingHttpHeaders, proxies = "10.0.0.0/8,fd00::1") => {
    const seen: IncomingHttpHeaders = { host: "inner:3000", ...headers };
    setForwarded(seen, { address: "10.0.0.1", encrypted: false }, trusting(proxies));
    return [seen["x-forwarded-for"], seen["x-forwarded-proto"], seen.host];
  };

  it.each([
    ["1.1.1.1, 198.51.100.9", "198.51.100.9"],
    ["1.1.1.1, 198.51.100.9, fd00::1, 10.2.0.3", "198.51.100.9"],
    ["10.0.0.9", "10.0.0.9"],
    ["1.1.1.1, unknown", "10.0.0.1"],
    ["1.1.1.1, <script>, 10.0.0.4", "10.0.0.4"],
    ["::ffff:198.51.100.9", "198.51.100.9"],
    ["", "10.0.0.1"],
  ])("[ST30] finds the visitor in %j", (chain, address) => {
    expect(behind({ "x-forwarded-for": chain })[0]).toBe(address);
  });

  it("[ST30] takes the last protocol and host, and nothing that is none", () => {
    const both = { "x-forwarded-proto": "http, https", "x-forwarded-host": "evil.example, courts.example" };
    expect(behind(both).slice(1)).toEqual(["https", "courts.example"]);
    const neither = { "x-forwarded-proto": "gopher", "x-forwarded-host": "evil.example/path" };
    expect(behind(neither).slice(1)).toEqual(["http", "inner:3000"]);
    expect(behind({}).slice(1)).toEqual(["http", "inner:3000"]);
  });
});

describe("parseTrustedProxies", () => {
  it.each(["127.0.0.1", "10.0.0.0/8, ::1", "fd00::/8", ""])("[ST29] reads %j", (text) => {
    expect(parseTrustedProxies(text).ok).toBe(true);
  });

  it.each(["proxy.local", "10.0.0.0/33", "fd00::/129", "10.0.0.1/8/8", "10.0.0.1/x", "10.0.0.1/", "*"])(
    "[ST2] [ST29] says that %s is neither address nor range",
    (text) => {
      expect(parseTrustedProxies(`127.0.0.1,${text}`)).toEqual({ ok: false, error: text });
    },
  );

  it("[ST29] trusts nobody when it is empty, and every address of a range", () => {
    expect(trusting("")("127.0.0.1")).toBe(false);
    const isTrusted = trusting("10.0.0.0/8,::1");
    expect(["10.255.0.1", "::ffff:10.1.1.1", "::1"].map(isTrusted)).toEqual([true, true, true]);
    expect(["11.0.0.1", "::2", "", "x"].map(isTrusted)).toEqual([false, false, false, false]);
  });
});
