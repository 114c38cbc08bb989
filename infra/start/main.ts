// The supervisor: `npm start`. Wires the settings, the product and the machine together.
import { resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { readArguments } from "./arguments.ts";
import { readEnv } from "./env.ts";
import { courtloom } from "./product.ts";
import { say } from "./say.ts";
import { supervise } from "./supervisor.ts";

const root = resolve(fileURLToPath(import.meta.url), "..", "..", "..");

async function main(): Promise<number> {
  const args = readArguments(process.argv.slice(2));
  const env = readEnv(process.env, root);
  if (args.ok && env.ok)
    return supervise({ env: env.value, args: args.value, product: courtloom(root), tell: say });
  const faults = [...(args.ok ? [] : [args.error]), ...(env.ok ? [] : env.error)];
  say(faults.join("\n"));
  return 1;
}

process.exit(await main());
