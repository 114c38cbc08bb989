import { describe, expect, it } from "vitest";
import { sameInstallation } from "./installed.mjs";

const text = (packages: Record<string, object>): string => JSON.stringify({ packages });
const LOCK = text({
  "": { name: "root" },
  "apps/web": { version: "0.1.0" },
  "node_modules/a": { version: "1.0.0" },
  "node_modules/b": { version: "2.0.0", optional: true },
});

describe("sameInstallation", () => {
  it("[ST1] accepts an installation that fits, with or without optional packages", () => {
    expect(sameInstallation(LOCK, text({ "node_modules/a": { version: "1.0.0" } }))).toBe(true);
    const both = { "node_modules/a": { version: "1.0.0" }, "node_modules/b": { version: "2.0.0" } };
    expect(sameInstallation(LOCK, text(both))).toBe(true);
  });

  it("[ST1] sees a missing package, another version, one too many and a damaged file", () => {
    expect(sameInstallation(LOCK, text({}))).toBe(false);
    expect(sameInstallation(LOCK, text({ "node_modules/a": { version: "1.0.1" } }))).toBe(false);
    const extra = { "node_modules/a": { version: "1.0.0" }, "node_modules/c": { version: "1.0.0" } };
    expect(sameInstallation(LOCK, text(extra))).toBe(false);
    expect(sameInstallation(LOCK, '{"packages":{')).toBe(false);
  });
});
