import { readFileSync } from "node:fs";
import { stripTypeScriptTypes } from "node:module";
import { describe, expect, it } from "vitest";
import * as tennis from "./index.ts";

const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
const example = /```ts\n([\s\S]*?)```/.exec(readme)?.[1] ?? "";

describe("README", () => {
  it("[SC39] [G6] shows an example that runs and says what its comments promise", () => {
    const [imports = "", ...lines] = example.trim().split("\n");
    const names = /\{ (.*) \}/.exec(imports)?.[1] ?? "";
    const body = stripTypeScriptTypes(lines.join("\n"));
    const run = new Function("tennis", `const { ${names} } = tennis;\n${body}\nreturn { line, said };`);
    const promised = [...example.matchAll(/\/\/ "(.*)"/g)].map((match) => match[1]);
    expect(Object.values(run(tennis))).toEqual(promised);
    expect(lines).toHaveLength(7);
  });

  it("keeps to forty lines", () => expect(readme.trimEnd().split("\n").length).toBeLessThanOrEqual(40));
});
