import { renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Addresses } from "./banner.ts";
import type { RouteTo } from "./carry.ts";
import { type Child, createChild } from "./child.ts";
import { childEnv, type Ports, type TrustInfo } from "./child-env.ts";
import type { ChildSpec } from "./child-spec.ts";
import type { StartEnv } from "./env.ts";
import type { Env, Product, RoleUrls } from "./product.ts";
import { type Say, step } from "./say.ts";

export interface ChildrenOptions {
  readonly env: StartEnv;
  readonly product: Product;
  readonly tell: Say;
  readonly addresses: Addresses;
  readonly ports: Ports;
  readonly instanceId: string;
  readonly trust: TrustInfo | undefined;
}

export interface Children {
  /** For the front door: the port of a part, while it is up. */
  readonly routeTo: RouteTo;
  /** Sets the roles' addresses; children that run with others are started again. */
  readonly useDatabase: (urls: RoleUrls, secret: string) => void;
  readonly env: () => Env;
  /** Starts `web` and `live`; resolves when both answer, rejects when one cannot be started. */
  readonly start: () => Promise<void>;
  /** Starts the demo driver, unless it runs. */
  readonly startDriver: () => void;
  readonly stop: () => Promise<void>;
}

/** What web sends when a person asked for the demo academy at run time. */
export function isDemoLoadedMessage(message: unknown): boolean {
  return (
    typeof message === "object" && message !== null && "kind" in message && message.kind === "demo-loaded"
  );
}

/** Readers see the old text or the new one, never half of it. */
function writeWhole(file: string, text: string): void {
  writeFileSync(`${file}.new`, text);
  renameSync(`${file}.new`, file);
}

/** The processes of the product, apart from the database. */
export function createChildren(options: ChildrenOptions): Children {
  const { env, product, tell, addresses, ports, instanceId, trust } = options;
  const state: { env: Env; web?: Child; live?: Child; driver?: Child; stopping: boolean } = {
    env: {},
    stopping: false,
  };
  const pids: Record<string, number | undefined> = { supervisor: process.pid };
  const launch = (spec: ChildSpec): Child =>
    createChild(spec, {
      instanceId,
      logDir: join(env.dataDir, "logs"),
      env: () => state.env,
      tell,
      onStarted: (name, pid) => {
        pids[name] = pid;
        writeWhole(join(env.dataDir, "processes.json"), JSON.stringify(pids));
      },
      onMessage: (message) => {
        if (isDemoLoadedMessage(message)) startDriver();
      },
    });
  const startDriver = (): void => {
    if (state.stopping || state.driver?.isKept()) return;
    state.driver = launch(product.demoDriver);
  };
  const all = (): Child[] => [state.web, state.live, state.driver].filter((child) => child !== undefined);
  return {
    routeTo: (part) => (state[part]?.isUp() ? ports[part] : undefined),
    env: () => state.env,
    useDatabase: (urls, secret) => {
      state.env = childEnv(env, urls, ports, addresses, { instanceId, secret, trust });
      for (const child of all()) child.restart();
    },
    start: () =>
      step("Courtloom", tell, async () => {
        if (state.stopping) return;
        state.live = launch(product.live(ports.live));
        state.web = launch(product.web(ports.web));
        await Promise.all([state.live.firstUp, state.web.firstUp]);
      }),
    startDriver,
    stop: async () => {
      state.stopping = true;
      await Promise.all(all().map((child) => child.stop()));
    },
  };
}
