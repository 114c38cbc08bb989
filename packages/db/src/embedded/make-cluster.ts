import {
  chmodSync,
  chownSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { err, ok, type Result } from "@courtloom/core";
import type { Place } from "./choose-place.ts";
import type { EmbeddedError } from "./embedded-error.ts";
import { OWNER_ROLE } from "./remembered.ts";
import { type RunAs, runCommand } from "./run-command.ts";

export function clusterExists(place: Place): boolean {
  return statSync(join(place.cluster, "PG_VERSION"), { throwIfNoEntry: false }) !== undefined;
}

/** Fails when the folder was made by another major version, which Postgres would refuse less clearly. */
export function checkClusterVersion(place: Place): Result<void, EmbeddedError> {
  const found = readFileSync(join(place.cluster, "PG_VERSION"), "utf8").trim();
  const needed = place.version.split(".")[0] ?? "";
  return found === needed ? ok(undefined) : err({ code: "other-version", found, needed });
}

/**
 * Makes the cluster beside its place and renames it there, so that a crash half way leaves nothing that
 * looks finished. Sorting and case rules are Postgres's own, the same on every system.
 */
export async function makeCluster(
  place: Place,
  password: string,
  runAs: RunAs | undefined,
  durable: boolean,
): Promise<Result<void, EmbeddedError>> {
  const draft = join(place.home, "postgres.new");
  const passwordFile = join(place.home, "postgres.password");
  try {
    rmSync(draft, { recursive: true, force: true });
    // Only an empty folder may be in the way: data without PG_VERSION are for a person to look at.
    if (statSync(place.cluster, { throwIfNoEntry: false })) rmdirSync(place.cluster);
    mkdirSync(draft, { mode: 0o700 });
    writeFileSync(passwordFile, `${password}\n`, { mode: 0o600 });
    chmodSync(passwordFile, 0o600);
    for (const path of runAs ? [draft, passwordFile] : []) chownSync(path, runAs?.uid ?? 0, runAs?.gid ?? 0);
    const args = initdbArgs(draft, passwordFile, durable);
    const end = await runCommand(place.binaries.initdb, args, runAs);
    if (end.exitCode !== 0) return err({ code: "initdb-failed", detail: end.output });
    renameSync(draft, place.cluster);
    return ok(undefined);
  } catch (error) {
    return err({ code: "place-closed", place: place.home, detail: String(error) });
  } finally {
    rmSync(passwordFile, { force: true });
  }
}

function initdbArgs(folder: string, passwordFile: string, durable: boolean): string[] {
  const locale = ["--locale=C", "--locale-provider=builtin", "--builtin-locale=C.UTF-8", "--encoding=UTF8"];
  const access = [`--username=${OWNER_ROLE}`, `--pwfile=${passwordFile}`, "--auth=scram-sha-256"];
  return [`--pgdata=${folder}`, ...access, ...locale, "--no-instructions", ...(durable ? [] : ["--no-sync"])];
}
