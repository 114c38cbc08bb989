import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { sameInstallation } from "./installed.mjs";
import { runNpm, step } from "./run.mjs";

/**
 * Installs the packages when there are none or `package-lock.json` changed. Only that file counts: an edited
 * script in package.json must not cost a minute.
 * @param {string} root
 */
export async function ensureInstalled(root) {
  const lockText = readFileSync(join(root, "package-lock.json"), "utf8");
  const hash = createHash("sha256").update(lockText).digest("hex");
  const stamp = join(root, "node_modules", ".courtloom-installed");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === hash) return;
  if (!isInstalledByHand(root, lockText)) {
    const why = existsSync(join(root, "node_modules")) ? "package-lock.json changed" : "only the first time";
    await step(`Installing packages (${why}, about a minute)`, () => install(root));
  }
  writeFileSync(stamp, hash);
}

function isInstalledByHand(root, lockText) {
  const written = join(root, "node_modules", ".package-lock.json");
  return existsSync(written) && sameInstallation(lockText, readFileSync(written, "utf8"));
}

async function install(root) {
  const end = await runNpm(root, ["ci", "--include=dev", "--loglevel=error"]);
  if (end.exitCode === 0) return;
  const hint =
    end.exitCode === 127
      ? "npm was not found. It comes with Node: install Node from https://nodejs.org."
      : "Check the network and the registry setting (npm ping), then run the command again.";
  throw new Error(
    `${end.output}\n\nThe packages could not be installed (npm ci ended with ${end.exitCode}). ${hint}`,
  );
}
