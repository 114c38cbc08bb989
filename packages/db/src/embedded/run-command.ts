import { spawn } from "node:child_process";

/** The user that a command runs as; `undefined` for the one who runs this process. */
export interface RunAs {
  readonly uid: number;
  readonly gid: number;
}

export interface CommandEnd {
  /** 127 if it could not be started at all. */
  readonly exitCode: number;
  /** The end of what it wrote, at most 4,000 characters. */
  readonly output: string;
}

const OUTPUT_KEPT = 4000;

/** Settings of the caller's own database tools must not reach ours, nor its language: we read messages. */
export const POSTGRES_ENV = {
  PATH: "/usr/local/bin:/usr/bin:/bin:/usr/sbin:/sbin",
  LANG: "C",
  LC_ALL: "C",
  TZ: "UTC",
};

/** Runs a command to its end; never throws, also when the file is missing or may not be run. */
export function runCommand(
  file: string,
  args: readonly string[],
  runAs?: RunAs | undefined,
): Promise<CommandEnd> {
  return new Promise((resolve) => {
    let output = "";
    const child = spawn(file, args, {
      ...runAs,
      cwd: "/",
      env: POSTGRES_ENV,
      stdio: ["ignore", "pipe", "pipe"],
    });
    const keep = (chunk: Buffer): void => {
      output = (output + chunk.toString("utf8")).slice(-OUTPUT_KEPT);
    };
    child.stdout.on("data", keep);
    child.stderr.on("data", keep);
    child.once("error", (error) => resolve({ exitCode: 127, output: error.message }));
    child.once("close", (code) => resolve({ exitCode: code ?? 1, output: output.trim() }));
  });
}
