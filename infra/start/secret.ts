import { randomBytes } from "node:crypto";
import { chmodSync, linkSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { err, ok, type Result } from "@courtloom/core";

/** The secret that sessions and codes are signed with: 64 hex digits in `secret` of the data folder. */
export function readOrMakeSecret(dataDir: string): Result<string, string> {
  const file = join(dataDir, "secret");
  const found = readIfThere(file);
  if (found === undefined) return ok(makeSecret(file));
  chmodSync(file, 0o600);
  if (/^[0-9a-f]{64}$/.test(found)) return ok(found);
  return err(
    `${file} is damaged: it should hold 64 hex digits. Put it back from a backup, or remove it; then everybody has to sign in again.`,
  );
}

/** Written whole before it gets its name, so that a crash leaves no half secret. */
function makeSecret(file: string): string {
  const secret = randomBytes(32).toString("hex");
  const draft = `${file}.new`;
  writeFileSync(draft, secret, { mode: 0o600, flush: true });
  linkSync(draft, file);
  rmSync(draft, { force: true });
  return secret;
}

function readIfThere(file: string): string | undefined {
  try {
    return readFileSync(file, "utf8").trim();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
}
