import { spawn } from "node:child_process";
import { once } from "node:events";
import { boundArgs, boundEnv } from "../start/bound-node.ts";
import { nextProgram } from "../start/build-web.ts";
import { buildEmptyPage } from "./empty-page.ts";

const ROOT = new URL("../..", import.meta.url).pathname;

/** Next says its address once it listens. */
const ADDRESS = /http:\/\/127\.0\.0\.1:\d+/;

export interface EmptyPage {
  readonly url: string;
  readonly stop: () => Promise<void>;
}

/** The empty page, served by the framework's own server on a free port. */
export const serveEmptyPage = async (): Promise<EmptyPage> => {
  const folder = await buildEmptyPage();
  const args = boundArgs([nextProgram(ROOT), "start", "-H", "127.0.0.1", "-p", "0"]);
  const child = spawn(process.execPath, args, {
    cwd: folder,
    env: boundEnv({ PATH: process.env.PATH ?? "", NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" }),
    stdio: ["ignore", "pipe", "pipe", "ipc"],
  });
  const ended = once(child, "exit");
  let output = "";
  const url = await new Promise<string>((resolve, reject) => {
    const read = (chunk: Buffer): void => {
      output += chunk.toString("utf8");
      const address = ADDRESS.exec(output)?.[0];
      if (address) resolve(address);
    };
    child.stdout?.on("data", read);
    child.stderr?.on("data", read);
    child.once("error", reject);
    child.once("exit", () => reject(new Error(`The empty page's server ended:\n${output}`)));
  });
  return {
    url,
    stop: async () => {
      child.kill("SIGTERM");
      await ended;
    },
  };
};
