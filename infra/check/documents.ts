import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";

const tracked = (root: string, ...patterns: string[]): string[] =>
  execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard", ...patterns], {
    cwd: root,
    encoding: "utf8",
  })
    .split("\n")
    .filter((file) => file !== "" && existsSync(join(root, file)));

const LINK = /\]\((?!https?:|mailto:|#)([^)\s#]+)(?:#[^)]*)?\)/g;
/** A path in back-ticks that names a file or folder of this tree. */
const PATH = /`((?:apps|packages|infra|e2e|shared)\/[A-Za-z0-9_./@-]+)`/g;

/** Links and paths in the documents that lead nowhere. */
export const deadPaths = (root: string): string[] =>
  tracked(root, "*.md").flatMap((file) => {
    const text = readFileSync(join(root, file), "utf8");
    const links = [...text.matchAll(LINK)].map((m) => join(dirname(file), m[1] ?? ""));
    const paths = [...text.matchAll(PATH)].map((m) => m[1] ?? "");
    return [...links, ...paths]
      .filter((path) => !existsSync(join(root, path)))
      .map((path) => `${file} names ${path}, which does not exist`);
  });

const RULE = /^\|?\s*\*{0,2}([A-Z]{1,3}\d{1,3})\*{0,2}\s*[|.:]/gm;
const CITED = /\[((?:[A-Z]{1,3}\d{1,3})(?:,\s*[A-Z]{1,3}\d{1,3})*)\]/g;

/** Rules cited by tests that SPEC.md does not have, rules numbered twice, and rules that no test cites. */
export const specProblems = (root: string): string[] => {
  const rules = [...readFileSync(join(root, "SPEC.md"), "utf8").matchAll(RULE)].map((m) => m[1] ?? "");
  const known = new Set(rules);
  const cited = new Set<string>();
  const problems: string[] = [];
  // Flows that several test files share live in folders called testing.
  for (const file of tracked(
    root,
    "*.test.ts",
    "*.test.tsx",
    "*.spec.ts",
    "*.contract.ts",
    "**/testing/*.ts",
  )) {
    for (const match of readFileSync(join(root, file), "utf8").matchAll(CITED)) {
      for (const rule of (match[1] ?? "").split(/,\s*/)) {
        cited.add(rule);
        if (!known.has(rule)) problems.push(`${file} cites ${rule}, which SPEC.md does not have`);
      }
    }
  }
  const twice = rules.filter((rule, i) => rules.indexOf(rule) !== i);
  problems.push(...twice.map((rule) => `SPEC.md numbers ${rule} twice`));
  problems.push(...[...known].filter((rule) => !cited.has(rule)).map((rule) => `no test cites ${rule}`));
  return [...new Set(problems)];
};

/** Source files that have grown too long: 500 lines, 600 for tests. Tables of data and migrations are exempt. */
export const longFiles = (root: string): string[] =>
  tracked(root, "*.ts", "*.tsx", "*.mjs", "*.css").flatMap((file) => {
    const lines = readFileSync(join(root, file), "utf8").split("\n").length - 1;
    const limit = /\.(test|spec|contract)\.tsx?$/.test(file) ? 600 : 500;
    return lines > limit ? [`${file} has ${lines} lines; split it by concept (limit ${limit})`] : [];
  });

/** `Math.random` and wall clocks in packages that must stay pure; the linter finds the other globals. */
export const impureCalls = (root: string): string[] =>
  tracked(
    root,
    ...["core", "tennis", "stats", "match-log", "decisions", "protocol", "demo"].map(
      (p) => `packages/${p}/src/*.ts`,
    ),
  )
    .filter((file) => !/\.(test|contract)\.ts$/.test(file))
    .flatMap((file) =>
      /\bMath\.random\b|\bperformance\.now\b|\bcrypto\.(?:randomUUID|getRandomValues)\b/.test(
        readFileSync(join(root, file), "utf8"),
      )
        ? [`${file} uses randomness or a clock; pass it in`]
        : [],
    );
