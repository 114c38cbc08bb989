import { createHash } from "node:crypto";
import { chmodSync, chownSync, cpSync, mkdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { err, ok, type Result } from "@courtloom/core";
import { type Binaries, binariesIn, binariesVersion } from "./binaries.ts";
import type { EmbeddedError } from "./embedded-error.ts";
import { type RunAs, runCommand } from "./run-command.ts";

/** Where root keeps what another user has to reach, when the checkout or data folder is closed to it. */
const OPEN_ROOT = "/var/lib/courtloom";

export interface Place {
  /** Holds the cluster `postgres` and its log; writable by this process. */
  readonly home: string;
  readonly cluster: string;
  readonly binaries: Binaries;
  readonly version: string;
}

/**
 * Folder and programs that the server's user can reach: those given, unless this is root and a folder above
 * them is closed (a checkout below /root); then `/var/lib/courtloom/<hash>` and a copy of the programs.
 */
export async function choosePlace(
  dataDir: string,
  remembered: string | undefined,
  given: Binaries,
  runAs: RunAs | undefined,
): Promise<Result<Place, EmbeddedError>> {
  const home = await chooseHome(dataDir, remembered, runAs);
  if (!home.ok) return home;
  const programs = await reachablePrograms(given, runAs);
  if (!programs.ok) return programs;
  return ok({ home: home.value, cluster: join(home.value, "postgres"), ...programs.value });
}

async function chooseHome(
  dataDir: string,
  remembered: string | undefined,
  runAs: RunAs | undefined,
): Promise<Result<string, EmbeddedError>> {
  const home = remembered ?? dataDir;
  if (runAs === undefined) return checkOwned(home);
  if (await canEnter(home, runAs)) return ok(home);
  if (statSync(join(home, "postgres"), { throwIfNoEntry: false })) {
    const detail = `user ${runAs.uid}, who owns the database, may not enter it any more; allow that with chmod o+x on the folders above`;
    return err({ code: "place-closed", place: home, detail });
  }
  return openHome(join(OPEN_ROOT, createHash("sha256").update(dataDir).digest("hex").slice(0, 12)), runAs);
}

function checkOwned(home: string): Result<string, EmbeddedError> {
  const cluster = statSync(join(home, "postgres"), { throwIfNoEntry: false });
  if (cluster === undefined || cluster.uid === process.getuid?.()) return ok(home);
  const detail = `it was made by another user (${cluster.uid}); start as that user`;
  return err({ code: "place-closed", place: home, detail });
}

async function canEnter(folder: string, runAs: RunAs): Promise<boolean> {
  const end = await runCommand("/bin/sh", ["-c", 'test -x "$1"', "sh", folder], runAs);
  return end.exitCode === 0;
}

async function openHome(home: string, runAs: RunAs): Promise<Result<string, EmbeddedError>> {
  try {
    mkdirSync(home, { recursive: true, mode: 0o755 });
    chownSync(home, 0, 0);
    chmodSync(home, 0o711);
  } catch (error) {
    return err({ code: "place-closed", place: home, detail: String(error) });
  }
  if (await canEnter(home, runAs)) return ok(home);
  return err({ code: "place-closed", place: home, detail: `user ${runAs.uid} may not enter it` });
}

async function reachablePrograms(
  given: Binaries,
  runAs: RunAs | undefined,
): Promise<Result<{ binaries: Binaries; version: string }, EmbeddedError>> {
  const asIs = await binariesVersion(given, runAs);
  if (asIs.ok) return ok({ binaries: given, version: asIs.value });
  if (runAs === undefined) return asIs;
  // Root itself can always reach them: if they fail for root too, copying would not help.
  const asRoot = await binariesVersion(given, undefined);
  if (!asRoot.ok) return asRoot;
  const copy = copyPrograms(given, asRoot.value);
  if (!copy.ok) return copy;
  const copied = await binariesVersion(copy.value, runAs);
  return copied.ok ? ok({ binaries: copy.value, version: copied.value }) : copied;
}

/** One copy per version, made beside and renamed, so that it is there whole or not at all. */
function copyPrograms(given: Binaries, version: string): Result<Binaries, EmbeddedError> {
  const target = join(OPEN_ROOT, `programs-${version}-${process.arch}`);
  const draft = `${target}.${process.pid}`;
  try {
    if (statSync(target, { throwIfNoEntry: false })) return ok(binariesIn(target));
    mkdirSync(OPEN_ROOT, { recursive: true, mode: 0o755 });
    cpSync(given.root, draft, { recursive: true, verbatimSymlinks: true });
    if (!statSync(target, { throwIfNoEntry: false })) renameSync(draft, target);
    return ok(binariesIn(target));
  } catch (error) {
    return err({ code: "place-closed", place: target, detail: String(error) });
  } finally {
    rmSync(draft, { recursive: true, force: true });
  }
}
