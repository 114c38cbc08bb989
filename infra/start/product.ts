import { join } from "node:path";
import { err, ok, type Result } from "@courtloom/core";
import { migrate, migrateErrorSentence } from "@courtloom/db/migrate";
import { buildWeb, nextProgram } from "./build-web.ts";
import type { ChildSpec } from "./child-spec.ts";
import { runScript } from "./run-script.ts";
import { type Say, step } from "./say.ts";

export type Env = Readonly<Record<string, string>>;

/** The roles' addresses that the parts of the product get; never the owner's. */
export interface RoleUrls {
  readonly appUrl: string;
  readonly authUrl: string;
}

/** What the supervisor runs. A test passes another one, with small stand-ins. Errors are sentences. */
export interface Product {
  readonly migrate: (ownerUrl: string, secret: string, tell: Say) => Promise<Result<RoleUrls, string>>;
  readonly build: (env: Env, tell: Say) => Promise<Result<void, string>>;
  readonly web: (port: number) => ChildSpec;
  readonly live: (port: number) => ChildSpec;
  readonly demoDriver: ChildSpec;
  readonly loadDemo: (env: Env, tell: Say) => Promise<Result<void, string>>;
  readonly isDemoLoaded: (env: Env, tell: Say) => Promise<boolean>;
}

/** Courtloom itself, from the checkout at `root`. */
export function courtloom(root: string): Product {
  const loader = join(root, "infra", "demo-driver", "load.ts");
  return {
    migrate: async (ownerUrl, secret, tell) => {
      const log = (line: string): void => tell(`  ${line}`);
      const migrated = await step("Tables", tell, () => migrate({ ownerUrl, secret, log }));
      return migrated.ok ? migrated : err(migrateErrorSentence(migrated.error));
    },
    build: (env, tell) => buildWeb(root, env, tell),
    web: (port) => ({
      name: "web",
      args: [nextProgram(root), "start", "--hostname", "127.0.0.1", "--port", String(port)],
      cwd: join(root, "apps", "web"),
      env: {},
      port,
      endless: true,
    }),
    live: (port) => ({
      name: "live",
      args: [join(root, "apps", "live", "src", "main.ts")],
      cwd: root,
      env: {},
      port,
      endless: true,
    }),
    demoDriver: {
      name: "demo",
      args: [join(root, "infra", "demo-driver", "main.ts")],
      cwd: root,
      env: {},
      port: undefined,
      endless: false,
    },
    loadDemo: async (env, tell) => {
      const end = await step("Demo academy", tell, () => runScript([loader], root, env));
      return end.exitCode === 0 ? ok(undefined) : err(`The demo academy could not be loaded:\n${end.output}`);
    },
    isDemoLoaded: async (env, tell) => {
      const end = await runScript([loader, "--is-loaded"], root, env);
      if (end.exitCode > 1) tell(`Whether the demo academy is loaded could not be found out:\n${end.output}`);
      return end.exitCode === 0;
    },
  };
}
