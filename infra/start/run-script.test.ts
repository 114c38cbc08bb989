import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { runScript } from "./run-script.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "courtloom-script-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

function script(text: string): string[] {
  const file = join(folder, "script.mjs");
  writeFileSync(file, text);
  return [file];
}

describe("runScript", () => {
  it("gives exit code and output", async () => {
    const args = script(`console.log("out"); console.error("err"); process.exitCode = 7;`);
    const end = await runScript(args, folder, {});
    expect(end.exitCode).toBe(7);
    expect(end.output.split("\n").sort()).toEqual(["err", "out"]);
  });

  it("ends when there is nothing left to do", async () => {
    expect(await runScript(script(`console.log("done")`), folder, {})).toEqual({
      exitCode: 0,
      output: "done",
    });
  });

  it("[ST11] leaves a script's own workers alone, which wait on a channel of their own", async () => {
    const args = script(`
      import { fork } from "node:child_process";
      if (process.argv[2] === "worker") {
        process.on("message", (word) => process.send(word.toUpperCase(), () => process.disconnect()));
      } else {
        const worker = fork(import.meta.filename, ["worker"]);
        worker.once("message", (word) => console.log("worker said " + word));
        setTimeout(() => worker.connected ? worker.send("hello") : console.log("worker is gone"), 400);
      }`);
    expect((await runScript(args, folder, {})).output).toBe("worker said HELLO");
  });
});
