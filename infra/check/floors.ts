import { readFileSync } from "node:fs";

type Lock = { packages: Record<string, { version?: string; link?: boolean }> };

const parts = (version: string): number[] => version.split(/[.+-]/).slice(0, 3).map(Number);

const isBelow = (version: string, floor: string): boolean => {
  const have = parts(version);
  const need = parts(floor);
  for (let i = 0; i < 3; i += 1) {
    const difference = (have[i] ?? 0) - (need[i] ?? 0);
    if (difference !== 0) return difference < 0;
  }
  return false;
};

/**
 * Every resolved copy of a package in the lockfile must be at its floor or above: a range in package.json
 * says nothing about what a stale lockfile installs. Floors name versions in which known flaws are fixed.
 */
export const belowFloor = (root: string): string[] => {
  const floors = JSON.parse(readFileSync(`${root}/infra/check/floors.json`, "utf8")) as Record<
    string,
    string
  >;
  const lock = JSON.parse(readFileSync(`${root}/package-lock.json`, "utf8")) as Lock;
  const seen = new Set<string>();
  const problems: string[] = [];
  for (const [path, { version }] of Object.entries(lock.packages)) {
    const name = path.split("node_modules/").at(-1) ?? "";
    const floor = floors[name];
    if (!floor || !version) continue;
    seen.add(name);
    if (isBelow(version, floor)) problems.push(`${path} is ${version}; at least ${floor} is needed`);
  }
  for (const name of Object.keys(floors)) {
    if (!seen.has(name))
      problems.push(`${name} has a floor but is not installed: take it out of floors.json`);
  }
  return problems;
};
