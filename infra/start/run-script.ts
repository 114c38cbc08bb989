import { spawn } from "node:child_process";
import { boundArgs, boundEnv } from "./bound-node.ts";

export interface ScriptEnd {
  readonly exitCode: number;
  /** The end of what it wrote, at most 6,000 characters. */
  readonly output: string;
}

const OUTPUT_KEPT = 6000;

/** Runs a script with this Node to its end; it ends too if the supervisor does. */
export function runScript(
  args: readonly string[],
  cwd: string,
  env: Readonly<Record<string, string>>,
  onOutput: (text: string) => void = () => undefined,
): Promise<ScriptEnd> {
  return new Promise((resolve) => {
    let output = "";
    const child = spawn(process.execPath, boundArgs(args), {
      cwd,
      env: boundEnv(env),
      stdio: ["ignore", "pipe", "pipe", "ipc"],
    });
    const keep = (chunk: Buffer): void => {
      const text = chunk.toString("utf8");
      output = (output + text).slice(-OUTPUT_KEPT);
      onOutput(text);
    };
    child.stdout?.on("data", keep);
    child.stderr?.on("data", keep);
    child.once("error", (error) => resolve({ exitCode: 127, output: error.message }));
    child.once("close", (code) => resolve({ exitCode: code ?? 1, output: output.trim() }));
  });
}
