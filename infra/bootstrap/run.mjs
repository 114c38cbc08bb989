import { spawn } from "node:child_process";
import { delimiter } from "node:path";

const OUTPUT_KEPT = 6000;
const SAY_AFTER_MS = 1000;
const SAY_AGAIN_MS = 10_000;

/**
 * Runs a program to its end; never throws for one that is missing (exit code 127).
 * @param {string} file
 * @param {readonly string[]} args
 * @param {{ cwd?: string, env?: NodeJS.ProcessEnv }} [options]
 * @returns {Promise<{ exitCode: number, output: string }>} `output` is the end of what it wrote
 */
export function run(file, args, options = {}) {
  return new Promise((resolve) => {
    let output = "";
    const child = spawn(file, args, { ...options, stdio: ["ignore", "pipe", "pipe"] });
    const keep = (chunk) => {
      output = (output + chunk.toString("utf8")).slice(-OUTPUT_KEPT);
    };
    child.stdout.on("data", keep);
    child.stderr.on("data", keep);
    child.once("error", (error) => resolve({ exitCode: 127, output: error.message }));
    child.once("close", (code) => resolve({ exitCode: code ?? 1, output: output.trim() }));
  });
}

/**
 * npm with the machine's own Node: `node_modules/.bin` is about to be replaced and must not be in the path.
 * @param {string} root
 * @param {readonly string[]} args
 */
export function runNpm(root, args) {
  const path = (process.env.PATH ?? "").split(delimiter).filter((entry) => !entry.includes("node_modules"));
  const env = {
    ...process.env,
    PATH: path.join(delimiter),
    npm_config_audit: "false",
    npm_config_fund: "false",
  };
  return run("npm", args, { cwd: root, env });
}

/**
 * Tells what is being waited for once it takes over a second, and that it goes on every ten.
 * @template T
 * @param {string} label
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function step(label, work) {
  const began = performance.now();
  const seconds = () => Math.round((performance.now() - began) / 1000);
  let said = false;
  const say = () => {
    console.log(said ? `  … ${seconds()} s` : `${label} …`);
    said = true;
  };
  const first = setTimeout(say, SAY_AFTER_MS);
  const again = setInterval(say, SAY_AGAIN_MS);
  try {
    const result = await work();
    if (said) console.log(`${label}: done in ${seconds()} s`);
    return result;
  } finally {
    clearTimeout(first);
    clearInterval(again);
  }
}
