// The supervisor with stand-ins in place of the product, as a program of its own so that it can be killed.
import { resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { ok } from "@courtloom/core";
import { readArguments } from "../../start/arguments.ts";
import type { ChildSpec } from "../../start/child-spec.ts";
import { readEnv } from "../../start/env.ts";
import type { Product } from "../../start/product.ts";
import { say } from "../../start/say.ts";
import { supervise } from "../../start/supervisor.ts";

const here = resolve(fileURLToPath(import.meta.url), "..");

const part = (name: string, port: number): ChildSpec => ({
  name,
  args: [resolve(here, "part.ts"), name, String(port)],
  cwd: here,
  env: {},
  port,
  endless: true,
});

const standIns: Product = {
  migrate: async (ownerUrl) => ok({ appUrl: ownerUrl, authUrl: ownerUrl }),
  build: async () => ok(undefined),
  web: (port) => part("web", port),
  live: (port) => part("live", port),
  demoDriver: {
    name: "demo",
    args: [resolve(here, "driver.ts")],
    cwd: here,
    env: {},
    port: undefined,
    endless: false,
  },
  loadDemo: async () => ok(undefined),
  isDemoLoaded: async () => false,
};

const args = readArguments(process.argv.slice(2));
const env = readEnv(process.env, here);
if (!args.ok || !env.ok) throw new Error("stand-ins need valid settings");
process.exit(await supervise({ env: env.value, args: args.value, product: standIns, tell: say }));
