import { statSync } from "node:fs";
import { err, ok, type Result } from "@courtloom/core";
import type { EmbeddedError } from "./embedded-error.ts";
import { type RunAs, runCommand } from "./run-command.ts";

const OWN_USER = "courtloom";

/**
 * Postgres refuses to run as root. So as root: the user who owns the data already, else `courtloom`, else
 * `postgres`, else a system user `courtloom` is made, else `nobody`. `undefined` for an ordinary user.
 */
export async function chooseRunAs(
  cluster: string,
  log: (line: string) => void,
): Promise<Result<RunAs | undefined, EmbeddedError>> {
  if (process.getuid?.() !== 0) return ok(undefined);
  const owner = ownerOf(cluster) ?? (await userNamed(OWN_USER)) ?? (await userNamed("postgres"));
  if (owner) return ok(owner);
  const made = await makeUser();
  if (made)
    log(`made the system user "${OWN_USER}" for the database, because Postgres refuses to run as root`);
  const user = made ?? (await userNamed("nobody"));
  return user ? ok(user) : err({ code: "no-user" });
}

function ownerOf(cluster: string): RunAs | undefined {
  const stat = statSync(cluster, { throwIfNoEntry: false });
  return stat && stat.uid !== 0 ? { uid: stat.uid, gid: stat.gid } : undefined;
}

async function userNamed(name: string): Promise<RunAs | undefined> {
  const [uid, gid] = await Promise.all([runCommand("id", ["-u", name]), runCommand("id", ["-g", name])]);
  if (uid.exitCode !== 0 || gid.exitCode !== 0) return undefined;
  return { uid: Number(uid.output), gid: Number(gid.output) };
}

async function makeUser(): Promise<RunAs | undefined> {
  const options = [
    "--system",
    "--user-group",
    "--no-create-home",
    "--home-dir",
    "/",
    "--shell",
    "/bin/false",
  ];
  const end = await runCommand("useradd", [...options, OWN_USER]);
  return end.exitCode === 0 ? userNamed(OWN_USER) : undefined;
}
