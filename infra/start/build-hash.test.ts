import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { buildHash } from "./build-hash.ts";

let root: string;
const write = (path: string, text: string): void => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "courtloom-hash-"));
  write("package-lock.json", "{}");
  write("tsconfig.base.json", "{}");
  write("apps/web/next.config.ts", "a");
  write("apps/web/src/page.tsx", "a");
  write("packages/core/src/index.ts", "a");
});
afterEach(() => rmSync(root, { recursive: true }));

describe("buildHash", () => {
  it.each([
    "package-lock.json",
    "tsconfig.base.json",
    "apps/web/next.config.ts",
    "apps/web/src/page.tsx",
    "apps/web/src/new.css",
    "packages/core/src/index.ts",
  ])("[ST15] changes with %s", (path) => {
    const before = buildHash(root);
    write(path, "changed");
    expect(buildHash(root)).not.toBe(before);
  });

  it.each([
    "apps/web/src/page.test.tsx",
    "packages/core/src/store.pg.test.ts",
    "packages/core/README.md",
    "apps/web/.next/BUILD_ID",
    "apps/web/node_modules/x/index.js",
    "apps/live/src/main.ts",
  ])("[ST15] does not change with %s", (path) => {
    const before = buildHash(root);
    write(path, "changed");
    expect(buildHash(root)).toBe(before);
  });

  it("[ST15] tells a moved file from the same text elsewhere", () => {
    const before = buildHash(root);
    rmSync(join(root, "apps/web/src/page.tsx"));
    write("apps/web/src/other.tsx", "a");
    expect(buildHash(root)).not.toBe(before);
  });
});
