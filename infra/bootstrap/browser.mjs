import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { run, step } from "./run.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
const MAC_PLACES = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

/**
 * Finds or fetches a browser for the tests and says in `.tmp/browser.json` which:
 * `{ "executablePath": "/usr/bin/chromium" }`, or `{}` for Playwright's own.
 * Order: what the machine has; on Debian as root its package; Playwright's download.
 * @param {string} root
 */
export async function ensureBrowser(root) {
  const file = join(root, ".tmp", "browser.json");
  const found = (await known(file)) ?? (await onMachine()) ?? (await fromDebian());
  if (found === undefined) await fromPlaywright(root);
  writeFileSync(file, `${JSON.stringify(found === undefined ? {} : { executablePath: found })}\n`);
}

async function known(file) {
  if (!existsSync(file)) return undefined;
  const path = JSON.parse(readFileSync(file, "utf8")).executablePath;
  return typeof path === "string" && existsSync(path) ? path : undefined;
}

async function onMachine() {
  const folders = (process.env.PATH ?? "").split(delimiter);
  const paths = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  for (const path of [...paths, ...MAC_PLACES]) {
    if (existsSync(path) && (await run(path, ["--version"])).exitCode === 0) return path;
  }
  return undefined;
}

async function fromDebian() {
  if (process.getuid?.() !== 0 || !existsSync("/etc/debian_version")) return undefined;
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  await step("Installing Chromium for the tests (only once)", async () => {
    await run("apt-get", ["update", "-q"], { env });
    await run("apt-get", ["install", "-y", "-q", "--no-install-recommends", "chromium"], { env });
  });
  return onMachine();
}

async function fromPlaywright(root) {
  const node = join(root, "node_modules", ".bin", "node");
  const cli = join(root, "node_modules", "playwright", "cli.js");
  const end = await step("Fetching a browser for the tests", () =>
    run(node, [cli, "install", "chromium"], { cwd: root }),
  );
  if (end.exitCode === 0) return;
  throw new Error(
    `${end.output}\n\nThe tests need a browser and none could be fetched. Install Chromium or Chrome (Debian: apt-get install chromium), then run the command again.`,
  );
}
