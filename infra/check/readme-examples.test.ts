import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const ROOT = new URL("../..", import.meta.url).pathname;
const PLACE = `${ROOT}.tmp/readme-examples`;

const exampleOf = (name: string): string | undefined =>
  /```ts\n([\s\S]*?)```/.exec(readFileSync(`${ROOT}packages/${name}/README.md`, "utf8"))?.[1];

const packages = readdirSync(`${ROOT}packages`);
const withExample = packages.filter((name) => exampleOf(name) !== undefined);

describe("the packages' READMEs", () => {
  beforeAll(() => mkdirSync(PLACE, { recursive: true }));
  afterAll(() => rmSync(PLACE, { recursive: true, force: true }));

  it("have an example in most packages", () => expect(withExample.length).toBeGreaterThanOrEqual(8));

  it.each(withExample)("example of %s runs", { timeout: 60_000 }, (name) => {
    const file = `${PLACE}/${name}.ts`;
    writeFileSync(file, exampleOf(name) ?? "");
    expect(() =>
      execFileSync(process.execPath, [file], { cwd: ROOT, encoding: "utf8", timeout: 20_000 }),
    ).not.toThrow();
  });
});
