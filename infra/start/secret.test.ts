import { chmodSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readOrMakeSecret } from "./secret.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "courtloom-secret-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe("readOrMakeSecret", () => {
  it("[ST18] makes 64 hex digits once, for its owner's eyes", () => {
    const first = readOrMakeSecret(folder);
    expect(first).toMatchObject({ ok: true, value: expect.stringMatching(/^[0-9a-f]{64}$/) });
    chmodSync(join(folder, "secret"), 0o644);
    expect(readOrMakeSecret(folder)).toEqual(first);
    expect(statSync(join(folder, "secret")).mode & 0o777).toBe(0o600);
  });

  it("[ST18] reports a damaged one and leaves it", () => {
    writeFileSync(join(folder, "secret"), "half");
    expect(readOrMakeSecret(folder)).toMatchObject({ ok: false, error: expect.stringContaining("damaged") });
    expect(readFileSync(join(folder, "secret"), "utf8")).toBe("half");
  });
});
