import { spawnSync } from "node:child_process";
import { deadPaths, impureCalls, longFiles, specProblems } from "./documents.ts";
import { belowFloor } from "./floors.ts";

const root = new URL("../..", import.meta.url).pathname;
const bin = (name: string): string => `${root}node_modules/.bin/${name}`;

/** A check is a command that must exit 0, or a function that lists what is wrong. */
type Check = { readonly name: string } & (
  | { readonly command: string; readonly args: readonly string[] }
  | { readonly problems: (root: string) => string[] }
);

const CHECKS: readonly Check[] = [
  {
    name: "format and lint",
    command: bin("biome"),
    args: ["ci", "--error-on-warnings", "--colors=off", "."],
  },
  { name: "types", command: bin("tsc"), args: ["-p", "tsconfig.json"] },
  { name: "types of the flows", command: bin("tsc"), args: ["-p", "e2e/tsconfig.json"] },
  { name: "types of the web app", command: bin("tsc"), args: ["-p", "apps/web/tsconfig.json"] },
  {
    name: "import direction and cycles",
    command: bin("depcruise"),
    args: ["--config", "infra/check/dependency-cruiser.mjs", "apps", "packages", "infra", "e2e"],
  },
  { name: "version floors", problems: belowFloor },
  { name: "links and paths in the documents", problems: deadPaths },
  { name: "rules and the tests that cite them", problems: specProblems },
  { name: "file sizes", problems: longFiles },
  { name: "pure packages", problems: impureCalls },
];

const passes = (check: Check): boolean => {
  if ("problems" in check) {
    const problems = check.problems(root);
    for (const problem of problems) console.log(`  ${problem}`);
    return problems.length === 0;
  }
  return spawnSync(check.command, check.args, { cwd: root, stdio: "inherit" }).status === 0;
};

const only = process.argv[2];
const failed = CHECKS.filter((check) => !only || check.name.includes(only)).filter((check) => {
  console.log(`check: ${check.name}`);
  return !passes(check);
});
console.log(
  failed.length === 0 ? "check: all well" : `check: ${failed.map((c) => c.name).join("; ")} failed`,
);
process.exitCode = failed.length === 0 ? 0 : 1;
