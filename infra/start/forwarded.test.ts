import type { IncomingHttpHeaders } from "node:http";
import { describe, expect, it } from "vitest";
import { setForwarded } from "./forwarded.ts";

describe("setForwarded", () => {
  it("[ST13] drops what a visitor claims and sets what is known", () => {
    const headers: IncomingHttpHeaders = {
      host: "courts.local:3000",
      cookie: "a=b",
      "x-forwarded-for": "10.0.0.1",
      "x-forwarded-proto": "https",
      "x-forwarded-host": "evil.example",
      "x-forwarded-prefix": "/x",
      forwarded: "for=10.0.0.1",
      "x-real-ip": "10.0.0.1",
    };
    setForwarded(headers, { address: "::ffff:192.168.1.7", encrypted: false });
    expect(headers).toEqual({
      host: "courts.local:3000",
      cookie: "a=b",
      "x-forwarded-for": "192.168.1.7",
      "x-forwarded-proto": "http",
      "x-forwarded-host": "courts.local:3000",
    });
  });
});
