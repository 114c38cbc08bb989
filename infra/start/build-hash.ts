import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";

/** Packages, and what builds leave: `.next`, `.next-<name>`. */
const SKIPPED_FOLDERS = /^(node_modules|\.next.*)$/;
const SKIPPED_FILES = /(\.test\.(ts|tsx|mjs)|\.md|\.tsbuildinfo|next-env\.d\.ts)$/;
/** Besides the sources: what decides about their packages and how they are compiled. */
const ALSO = ["package-lock.json", "tsconfig.base.json"];

/** True for a file that cannot change what `next build` makes. */
export function isSkipped(name: string): boolean {
  return SKIPPED_FILES.test(name);
}

/**
 * A hash of everything that the web build is made of: `apps/web` with its configuration, all packages and
 * the lock file; tests and texts for readers left out. The same files give the same hash on every system.
 */
export function buildHash(root: string): string {
  const hash = createHash("sha256");
  const files = [join(root, "apps", "web"), join(root, "packages")].flatMap(filesBelow);
  for (const path of [...files, ...ALSO.map((name) => join(root, name))].sort()) {
    const content = readFileSync(path);
    hash.update(`${relative(root, path).split(sep).join("/")}\0${content.length}\0`);
    hash.update(content);
  }
  return hash.digest("hex");
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return SKIPPED_FOLDERS.test(entry.name) ? [] : filesBelow(path);
    return entry.isFile() && !isSkipped(entry.name) ? [path] : [];
  });
}
