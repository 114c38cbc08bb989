import { describe, expect, it } from "vitest";
import { makeCodeKeeping } from "./code-keeping.ts";

const SECRET = "a secret of the test, long enough to be one";
const keeping = makeCodeKeeping(SECRET);

describe("how a code is kept", () => {
  it("[AU12] is found by a hash that nobody can make without the secret", () => {
    expect(keeping.hash("AB2CD3")).toBe(makeCodeKeeping(SECRET).hash("AB2CD3"));
    expect(keeping.hash("AB2CD3")).not.toBe(makeCodeKeeping(`${SECRET}!`).hash("AB2CD3"));
    expect(keeping.hash("AB2CD3")).toMatch(/^[0-9a-f]{64}$/);
  });

  it("[AU12] is sealed for its own id, differently each time", () => {
    const sealed = keeping.seal("AB2CD3", "code-1");
    expect(sealed).not.toBe(keeping.seal("AB2CD3", "code-1"));
    expect(keeping.unseal(sealed, "code-1")).toBe("AB2CD3");
    expect(keeping.unseal(sealed, "code-2")).toBeUndefined();
    expect(makeCodeKeeping(`${SECRET}!`).unseal(sealed, "code-1")).toBeUndefined();
  });

  it("[AU12] does not open when a bit was changed or the end is missing", () => {
    const bytes = Buffer.from(keeping.seal("AB2CD3", "code-1"), "base64url");
    for (let at = 0; at < bytes.length; at += 1) {
      const changed = Buffer.from(bytes);
      changed[at] = (changed[at] ?? 0) ^ 1;
      expect(keeping.unseal(changed.toString("base64url"), "code-1")).toBeUndefined();
      expect(keeping.unseal(bytes.subarray(0, at).toString("base64url"), "code-1")).toBeUndefined();
    }
  });

  it("[AU19] needs a secret of 32 characters", () => {
    expect(() => makeCodeKeeping("x".repeat(31))).toThrow("at least 32");
  });
});
