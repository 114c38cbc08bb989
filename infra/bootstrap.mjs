// Makes a checkout ready to run, on the machine's own Node and with nothing installed: `npm start` and
// `npm test` call it first. Plain JavaScript without packages for that reason.
//
//   node infra/bootstrap.mjs          packages, Node 24 and the database programs
//   node infra/bootstrap.mjs --test   the same, and a browser for the tests (.tmp/browser.json)
import { mkdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const root = resolve(fileURLToPath(import.meta.url), "..", "..");

/** @param {string} sentence */
function giveUp(sentence) {
  console.error(`\n${sentence}\n`);
  process.exit(1);
}

const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  giveUp(
    `Courtloom needs Node 20.19 or later to set itself up; this is Node ${process.versions.node}. Get a current one from https://nodejs.org and run the command again.`,
  );
}
if (process.platform === "win32") {
  giveUp("Courtloom runs on Linux and macOS. On Windows, run the same command inside WSL 2 (wsl --install).");
}

try {
  const { takeLock } = await import("./bootstrap/lock.mjs");
  const { ensureInstalled } = await import("./bootstrap/install.mjs");
  const { ensurePrograms } = await import("./bootstrap/programs.mjs");
  const tmp = join(root, ".tmp");
  mkdirSync(tmp, { recursive: true });
  const release = await takeLock(join(tmp, "bootstrap.lock"));
  try {
    await ensureInstalled(root);
    await ensurePrograms(root);
    if (process.argv.includes("--test")) {
      const { ensureBrowser } = await import("./bootstrap/browser.mjs");
      await ensureBrowser(root);
    }
  } finally {
    release();
  }
} catch (error) {
  giveUp(error instanceof Error ? error.message : String(error));
}
