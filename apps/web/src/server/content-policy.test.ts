import { describe, expect, it } from "vitest";
import { contentPolicy } from "./content-policy.ts";

const partsOf = (policy: string) =>
  new Map(
    policy.split("; ").map((part) => [part.slice(0, part.indexOf(" ")), part.slice(part.indexOf(" ") + 1)]),
  );

describe("content policy", () => {
  it("[WB1] lets run only scripts with this response's nonce, and frames nothing", () => {
    const parts = partsOf(contentPolicy({ nonce: "abc", host: "club.example", development: false }));
    expect(parts.get("script-src")).toBe("'self' 'nonce-abc' 'strict-dynamic'");
    expect(parts.get("style-src")).toBe("'self' 'nonce-abc'");
    expect(parts.get("object-src")).toBe("'none'");
    expect(parts.get("base-uri")).toBe("'none'");
    expect(parts.get("frame-ancestors")).toBe("'none'");
  });

  it("[WB1] connects to its own host alone, by http and WebSocket", () => {
    const parts = partsOf(contentPolicy({ nonce: "abc", host: "10.0.0.4:3000", development: false }));
    expect(parts.get("connect-src")).toBe("'self' ws://10.0.0.4:3000 wss://10.0.0.4:3000");
  });

  it("[WB11] reaches one more origin where a page may", () => {
    const options = { nonce: "abc", host: "10.0.0.4:3000", development: false };
    const parts = partsOf(contentPolicy({ ...options, alsoReaches: "https://10.0.0.4:3443" }));
    expect(parts.get("connect-src")).toMatch(/ https:\/\/10\.0\.0\.4:3443$/);
    expect(parts.get("script-src")).not.toContain("https:");
    expect(contentPolicy(options)).not.toContain("https:");
  });

  it.each(["evil.example; script-src *", "a b", "*", "", "x.example/path"])(
    "[WB1] takes nothing from the made-up host %j",
    (host) => {
      const parts = partsOf(contentPolicy({ nonce: "abc", host, development: false }));
      expect(parts.get("connect-src")).toBe("'self'");
      expect(parts.get("script-src")).not.toContain("*");
    },
  );
});
