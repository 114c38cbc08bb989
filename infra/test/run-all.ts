import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";

/** Runs every test (units and stores, whole flows in a browser, kill -9 of every part) and closes with one plain line. */
const root = new URL("../..", import.meta.url).pathname;
const results = `${root}.tmp/test-results`;
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

interface Tally {
  readonly passed: number;
  readonly failed: number;
}

const run = (name: string, bin: string, args: readonly string[], env: Record<string, string>): number => {
  console.log(`\n== ${name} ==`);
  return (
    spawnSync(`${root}node_modules/.bin/${bin}`, args, {
      cwd: root,
      stdio: "inherit",
      env: { ...process.env, ...env },
    }).status ?? 1
  );
};

const readJson = <T>(file: string): T | undefined => {
  try {
    return JSON.parse(readFileSync(file, "utf8")) as T;
  } catch {
    console.log(`No results in ${file}: the runner stopped before it wrote them. It counts as one failure.`);
    return undefined;
  }
};

/** A runner that exits with an error but reports no failed test (a crash, a file that would not load) is a failure too. */
const tallied = (tally: Tally, status: number): Tally =>
  status !== 0 && tally.failed === 0 ? { ...tally, failed: 1 } : tally;

const units = (): Tally => {
  const file = `${results}/units.json`;
  const status = run(
    "units and stores",
    "vitest",
    ["run", "--reporter=default", "--reporter=json", `--outputFile.json=${file}`],
    {},
  );
  const report = readJson<{ numPassedTests: number; numFailedTests: number }>(file);
  return tallied({ passed: report?.numPassedTests ?? 0, failed: report?.numFailedTests ?? 0 }, status);
};

const flows = (): Tally => {
  const file = `${results}/flows.json`;
  const status = run(
    "flows in a browser",
    "playwright",
    ["test", "-c", "e2e/playwright.config.ts", "--reporter=list,json"],
    {
      PLAYWRIGHT_JSON_OUTPUT_NAME: file,
    },
  );
  const report = readJson<{ stats: { expected: number; unexpected: number; flaky: number } }>(file);
  const stats = report?.stats ?? { expected: 0, unexpected: 0, flaky: 0 };
  return tallied({ passed: stats.expected, failed: stats.unexpected + stats.flaky }, status);
};

/** The fault run prints its own "N passed, N failed"; its output is shown and then read. */
const faults = (): Tally => {
  console.log("\n== kill -9 of every part ==");
  const end = spawnSync(`${root}node_modules/.bin/node`, ["infra/faults/main.ts"], {
    cwd: root,
    stdio: ["ignore", "pipe", "inherit"],
    encoding: "utf8",
  });
  // The closing line of the whole run must be the only plain one, so this part's is left out.
  const closing = /^(\d+) passed, (\d+) failed$/m;
  console.log(end.stdout.replace(closing, "").trimEnd());
  const counted = closing.exec(end.stdout);
  return tallied({ passed: Number(counted?.[1] ?? 0), failed: Number(counted?.[2] ?? 0) }, end.status ?? 1);
};

const tallies = [units(), flows(), faults()];
const passed = tallies.reduce((sum, t) => sum + t.passed, 0);
const failed = tallies.reduce((sum, t) => sum + t.failed, 0);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
